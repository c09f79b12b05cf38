/** `festoon figures`: every number that a person could dispute, with where it comes from. */
import { figures } from '../../apiary/handbook.ts';
import { figureSource } from '../../words/figure-source.ts';
import { text } from '../../words/text.ts';
import { type Command, flag } from './command.ts';
import { table } from './table.ts';

export const figuresCommand: Command = {
  name: 'figures',
  usage: '[KEY] [--json]',
  line: 'command.figures',
  help: ['command.figures-help'],
  options: { json: { type: 'boolean' } },
  run: async (call) => {
    const {
      out,
      words: [key],
    } = call;
    const found = figures.filter((figure) => key === undefined || figure.key === key);
    if (found.length === 0) {
      out.complain(text('command.no-figure', { key: key ?? '' }));
      return 2;
    }
    if (flag(call, 'json')) {
      out.print(JSON.stringify(key === undefined ? found : found[0], null, 2));
      return 0;
    }
    const rows = found.map((figure) => [
      figure.key,
      `${figure.value} ${figure.unit}`,
      `${figure.low} – ${figure.high}`,
      figureSource(figure),
    ]);
    for (const line of table(rows)) out.print(line);
    return 0;
  },
};
