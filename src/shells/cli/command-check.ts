/** `festoon check`: names every fault of a journal file and changes nothing. */
import { readFileSync } from 'node:fs';
import { checkText } from '../../apiary.ts';
import { issueText } from '../../words/issue-text.ts';
import { text } from '../../words/text.ts';
import { type Command, flag } from './command.ts';
import { todayIn } from './source.ts';

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
    let source: string;
    try {
      source = readFileSync(file, 'utf8');
    } catch (thrown) {
      call.out.complain(text('command.cannot-read', { file, why: (thrown as NodeJS.ErrnoException).code ?? '' }));
      return 1;
    }
    const report = checkText(source, todayIn(null));
    if (flag(call, 'json')) call.out.print(JSON.stringify(report, null, 2));
    else {
      for (const issue of report.issues) call.out.print(issueText(issue));
      call.out.print(
        text('command.checked', { entries: report.entries, faults: report.issues.length, unknown: report.notUnderstood }),
      );
    }
    return report.issues.length === 0 ? 0 : 1;
  },
};
