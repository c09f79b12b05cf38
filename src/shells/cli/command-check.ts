/** `festoon check`: names every fault of a journal file and changes nothing. */
import { checkText } from '../../apiary/check-text.ts';
import { issueText } from '../../words/issue-text.ts';
import { text } from '../../words/text.ts';
import { readJournalFile } from '../disk/journal-file.ts';
import { type Command, flag } from './command.ts';
import { complainAll } from './complain.ts';
import { todayAnywhere } from './source.ts';

export const checkCommand: Command = {
  name: 'check',
  usage: 'FILE [--json]',
  line: 'command.check',
  help: ['command.check-help'],
  options: { json: { type: 'boolean' } },
  run: async (call) => {
    const [file] = call.words;
    if (file === undefined) {
      call.out.complain(text('command.needs-file', { name: 'check' }));
      return 2;
    }
    const source = readJournalFile(file);
    if (!source.ok) {
      complainAll(call.out, source.issues);
      return 1;
    }
    const report = checkText(source.value, todayAnywhere());
    if (flag(call, 'json')) {
      const { lines, faults, notes, conflicts } = report;
      call.out.print(JSON.stringify({ lines, faults, notes, conflicts }, null, 2));
    } else {
      for (const issue of [...report.faults, ...report.notes]) call.out.print(issueText(issue));
      call.out.print(text('command.checked', { lines: report.lines, faults: report.faults.length, notes: report.notes.length }));
    }
    return report.faults.length === 0 ? 0 : 1;
  },
};
