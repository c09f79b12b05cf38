/** `festoon import`: adds a journal of JSON lines to the keeper's own; what is bad is named with its line, what is good is added. */
import { allKinds } from '../../apiary.ts';
import { readJournal } from '../../journal/check-journal.ts';
import { text } from '../../words/text.ts';
import { addEntries } from '../disk/add-entries.ts';
import { readJournalFile } from '../disk/journal-file.ts';
import type { Command } from './command.ts';
import { complainAll } from './complain.ts';
import { dataDir, todayAnywhere } from './source.ts';

export const importCommand: Command = {
  name: 'import',
  usage: 'FILE',
  line: 'command.import',
  help: ['command.import-help'],
  options: {},
  run: async (call) => {
    const [file] = call.words;
    if (file === undefined) {
      call.out.complain(text('command.needs-file', { name: 'import' }));
      return 2;
    }
    const source = readJournalFile(file);
    if (!source.ok) {
      complainAll(call.out, source.issues);
      return 1;
    }
    const { entries, faults } = readJournal(source.value, allKinds, { today: todayAnywhere() });
    complainAll(call.out, faults);
    const added = await addEntries(dataDir(), entries);
    if (!added.ok) {
      complainAll(call.out, added.issues);
      return 1;
    }
    call.out.print(text('command.added', { added: added.value.added.length, known: added.value.known.length }));
    return faults.length === 0 ? 0 : 1;
  },
};
