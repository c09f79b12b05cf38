/** `festoon visit`: adds one visit from a JSON file to the keeper's journal, or prints the schema of such a file. */
import { readFileSync } from 'node:fs';
import { readJournal } from '../../apiary.ts';
import { entriesOfVisitFile, visitFileJsonSchema } from '../../apiary/visit-file.ts';
import { text } from '../../words/text.ts';
import { addEntries } from '../disk/add-entries.ts';
import { type Command, flag } from './command.ts';
import { complainAll } from './complain.ts';
import { dataDir, entriesOf } from './source.ts';

export const visitCommand: Command = {
  name: 'visit',
  usage: 'FILE | - | --schema',
  line: 'command.visit',
  help: ['command.visit-help'],
  options: { schema: { type: 'boolean' } },
  run: async (call) => {
    if (flag(call, 'schema')) {
      call.out.print(JSON.stringify(visitFileJsonSchema(), null, 2));
      return 0;
    }
    const [file] = call.words;
    if (file === undefined) {
      call.out.complain(text('command.needs-file', { name: 'visit' }));
      return 2;
    }
    const entries = entriesOf(call);
    if (!entries.ok) {
      complainAll(call.out, entries.issues);
      return 1;
    }
    let json: unknown;
    try {
      json = JSON.parse(readFileSync(file === '-' ? 0 : file, 'utf8'));
    } catch (thrown) {
      call.out.complain(text('command.not-json', { why: (thrown as Error).message }));
      return 1;
    }
    const made = entriesOfVisitFile(json, readJournal(entries.value).state);
    const added = made.ok ? await addEntries(dataDir(), made.value) : made;
    if (!added.ok) {
      complainAll(call.out, added.issues);
      return 1;
    }
    call.out.print(text('command.added', { added: added.value.added.length, known: added.value.known.length }));
    return 0;
  },
};
