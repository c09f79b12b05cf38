/** `festoon import`: adds a journal of JSON lines to the keeper's own; what is bad is named with its line, what is good is added. */
import { readFileSync } from 'node:fs';
import { allKinds } from '../../apiary.ts';
import { parseLines } from '../../journal/lines.ts';
import { text } from '../../words/text.ts';
import { addEntries } from '../disk/add-entries.ts';
import type { Command } from './command.ts';
import { complainAll } from './complain.ts';
import { dataDir } from './source.ts';

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
    let source: string;
    try {
      source = readFileSync(file, 'utf8');
    } catch (thrown) {
      call.out.complain(text('command.cannot-read', { file, why: (thrown as NodeJS.ErrnoException).code ?? '' }));
      return 1;
    }
    const { entries, issues } = parseLines(source, allKinds);
    complainAll(call.out, issues);
    const added = await addEntries(dataDir(), entries, allKinds);
    if (!added.ok) {
      complainAll(call.out, added.issues);
      return 1;
    }
    call.out.print(text('command.added', { added: added.value.added.length, known: added.value.known.length }));
    return issues.length === 0 ? 0 : 1;
  },
};
