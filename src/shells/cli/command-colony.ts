/** `festoon colony`: what one colony is believed to be on a day, as text or as the whole view in JSON. */
import { pictureOf } from '../../apiary.ts';
import { foreseeAll, toldOf } from '../../apiary/foresee.ts';
import type { Advice } from '../../advice/advice.ts';
import type { ColonyView, Total } from '../../colony/view.ts';
import { formatWindow } from '../../words/format-day.ts';
import { formatRange, type Measure } from '../../words/format-number.ts';
import { plainManner } from '../../words/say.ts';
import { say, text } from '../../words/text.ts';
import { type Command, flag, journalOptions, type Out } from './command.ts';
import { complainAll } from './complain.ts';
import { apiaryOf } from './source.ts';
import { table } from './table.ts';

export const colonyCommand: Command = {
  name: 'colony',
  usage: 'NAME-OR-ID [--day DAY] [--json]',
  line: 'command.colony',
  help: ['command.colony-help', 'command.journal-help'],
  options: journalOptions,
  run: async (call) => {
    const read = apiaryOf(call);
    if (!read.ok) {
      complainAll(call.out, read.issues);
      return 1;
    }
    const { apiary, day } = read.value;
    const [name = ''] = call.words;
    const isMeant = (colony: { readonly id: string; readonly name: string }): boolean =>
      colony.id === name || colony.name === name;
    const picture = pictureOf(apiary, day, Infinity, toldOf(foreseeAll(apiary, day, isMeant)));
    const view = picture.colonies.find((each) => each.colony === name || each.name === name);
    if (view === undefined) {
      const known = picture.colonies.map((each) => each.name).join(', ');
      call.out.complain(text('command.no-colony', { name, known }));
      return 2;
    }
    if (flag(call, 'json')) call.out.print(JSON.stringify(view, null, 2));
    else
      report(
        view,
        picture.advice.filter((advice) => advice.colony === view.colony),
        call.out,
      );
    return 0;
  },
};

const lines: readonly (readonly [name: keyof ColonyView['totals'], label: string, measure: Measure])[] = [
  ['adults', 'command.total-adults', 'none'],
  ['egg', 'content.egg', 'none'],
  ['larva', 'content.larva', 'none'],
  ['sealed', 'content.sealed', 'none'],
  ['emerging', 'content.emerging', 'none'],
  ['drone', 'content.drone', 'none'],
  ['honeyKg', 'command.total-honey', 'kg'],
  ['breadKg', 'content.bread', 'kg'],
];

function report(view: ColonyView, advice: readonly Advice[], out: Out): void {
  const last = view.visits.at(-1);
  out.print(
    text('command.colony-head', { name: view.name, hive: view.hiveName, day: { kind: 'day', day: view.day, cite: nowhere } }),
  );
  if (last !== undefined) out.print(text('command.colony-seen', { day: { kind: 'day', day: last.day, cite: nowhere } }));
  out.print(text('command.colony-queen', { state: { kind: 'term', key: `queen-state.${view.queen.state}` } }));
  out.print('');
  const head = ['command.total-what', 'command.total-seen', 'command.total-carried', 'command.total-both'] as const;
  const rows = lines.map(([name, label, measure]) => [text(label as 'content.egg'), ...parts(view.totals[name], measure)]);
  for (const line of table([head.map((key) => text(key)), ...rows])) out.print(line);
  if (view.layingPerDay !== null) {
    out.print(`\n${text('command.colony-laying', { rate: formatRange(view.layingPerDay, 'none', false, plainManner) })}`);
  }
  if (view.queen.firstEggs !== null) {
    out.print(text('command.colony-first-eggs', { when: formatWindow(view.queen.firstEggs, plainManner) }));
  }
  if (advice.length > 0) out.print('');
  for (const each of advice) out.print(say(each.say));
}

function parts(total: Total, measure: Measure): readonly string[] {
  return [total.seen, total.carried, total.total].map((range) => formatRange(range, measure, false, plainManner));
}

const nowhere = { kind: 'worked out', from: [] } as const;
