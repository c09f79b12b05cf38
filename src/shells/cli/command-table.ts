/** `festoon table NAME`: one of the journal's tidy tables as comma-separated values. */
import { csvText, tableNames, tableOf } from '../../apiary/tables.ts';
import { text } from '../../words/text.ts';
import type { Command } from './command.ts';
import { complainAll } from './complain.ts';
import { entriesOf } from './source.ts';

export const tableCommand: Command = {
  name: 'table',
  usage: 'NAME',
  line: 'command.table',
  help: ['command.table-help', 'command.journal-help'],
  options: { journal: { type: 'string' }, demo: { type: 'boolean' } },
  run: async (call) => {
    const [asked = ''] = call.words;
    const name = tableNames.find((each) => each === asked);
    if (name === undefined) {
      call.out.complain(text('command.table-unknown', { name: asked, known: tableNames.join(', ') }));
      return 2;
    }
    const entries = entriesOf(call);
    if (!entries.ok) {
      complainAll(call.out, entries.issues);
      return 1;
    }
    call.out.print(csvText(tableOf(name, entries.value)).trimEnd());
    return 0;
  },
};
