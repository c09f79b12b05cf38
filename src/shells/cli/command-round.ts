/** `festoon round`: which hives to open, glance at or leave shut, the longest need first. */
import { pictureOf } from '../../apiary.ts';
import { foreseeAll, toldOf } from '../../apiary/foresee.ts';
import { text } from '../../words/text.ts';
import { stopLine } from '../../words/stop-line.ts';
import { type Command, flag, journalOptions } from './command.ts';
import { complainAll } from './complain.ts';
import { apiaryOf } from './source.ts';
import { table } from './table.ts';

export const roundCommand: Command = {
  name: 'round',
  usage: '[--day DAY] [--json]',
  line: 'command.round',
  help: ['command.round-help', 'command.journal-help'],
  options: journalOptions,
  run: async (call) => {
    const read = apiaryOf(call);
    if (!read.ok) {
      complainAll(call.out, read.issues);
      return 1;
    }
    const { apiary, day } = read.value;
    const picture = pictureOf(apiary, day, 0, toldOf(foreseeAll(apiary, day)));
    if (flag(call, 'json')) {
      call.out.print(JSON.stringify(picture.round, null, 2));
      return 0;
    }
    if (picture.round.length === 0) {
      call.out.print(text('command.round-empty'));
      return 0;
    }
    const names = new Map(picture.colonies.map((view) => [view.colony, view.name]));
    const rows = picture.round.map((stop, index) => [String(index + 1), names.get(stop.colony) ?? '', stopLine(stop)]);
    for (const line of table(rows)) call.out.print(line);
    return 0;
  },
};
