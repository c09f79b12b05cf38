/** `festoon export`: the whole journal as JSON lines, entries that are not understood included as they came. */
import { writeFileSync } from 'node:fs';
import { linesOf } from '../../journal/lines.ts';
import { text } from '../../words/text.ts';
import { type Command, option } from './command.ts';
import { complainAll } from './complain.ts';
import { entriesOf } from './source.ts';

export const exportCommand: Command = {
  name: 'export',
  usage: '[--out FILE]',
  line: 'command.export',
  help: ['command.export-help'],
  options: { out: { type: 'string' }, journal: { type: 'string' }, demo: { type: 'boolean' } },
  run: async (call) => {
    const entries = entriesOf(call);
    if (!entries.ok) {
      complainAll(call.out, entries.issues);
      return 1;
    }
    const lines = linesOf(entries.value);
    const out = option(call, 'out');
    if (out === null) {
      call.out.print(lines.trimEnd());
      return 0;
    }
    try {
      writeFileSync(out, lines, { flag: 'wx' });
    } catch (thrown) {
      call.out.complain(text('command.cannot-write', { file: out, why: (thrown as NodeJS.ErrnoException).code ?? '' }));
      return 1;
    }
    call.out.print(text('command.exported', { entries: entries.value.length, file: out }));
    return 0;
  },
};
