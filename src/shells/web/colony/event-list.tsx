/** What happened to the colony, newest first: visits with their temper, and everything that was written down beside them. */
import { winterTasks, type WinterList } from '../../../apiary/visit-terms.ts';
import type { ColonyEvent } from '../../../colony/state.ts';
import type { ColonyView } from '../../../colony/view.ts';
import type { Day } from '../../../numbers/day.ts';
import type { TextKey } from '../../../words/text.ts';
import { formatDay } from '../../../words/format-day.ts';
import type { Wording } from '../frame/manner.tsx';
import { useText } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

interface Line {
  readonly day: Day;
  readonly key: string;
  readonly text: string;
}

const shownAtOnce = 12;

export function EventList({ view }: { readonly view: ColonyView }) {
  const { t, manner } = useText();
  const { names } = useYard().aside;
  const visits: readonly Line[] = view.visits.map((visit) => ({
    day: visit.day,
    key: visit.id,
    text: [
      t('event.visit', { kind: t(`visit.${visit.kind}`), count: visit.barsOpened }),
      visit.temper === null ? null : t('event.temper', { temper: t(`temper.${visit.temper}` as TextKey) }),
      winterText(visit.winter, 'done', t),
      winterText(visit.winter, 'not done', t),
      visit.signs.length === 0
        ? null
        : t('event.signs', {
            signs: [...new Set(visit.signs.map((sign) => t(`sign.${sign.code}` as TextKey)))].join(', '),
          }),
    ]
      .filter((part) => part !== null)
      .join(' '),
  }));
  const events: readonly Line[] = view.events.map(({ day, entry, event }) => ({
    day,
    key: `${entry}-${event.kind}`,
    text: eventText(event, t, names),
  }));
  const lines = [...visits, ...events].sort((a, b) => (a.day === b.day ? 0 : a.day < b.day ? 1 : -1));
  const row = (line: Line) => (
    <li key={line.key}>
      <b>{formatDay(line.day, manner)}</b> {line.text}
    </li>
  );
  return (
    <section>
      <h2>{t('event.title')}</h2>
      <ul className="dated">{lines.slice(0, shownAtOnce).map(row)}</ul>
      {lines.length <= shownAtOnce ? null : (
        <details>
          <summary>{t('event.more', { count: lines.length - shownAtOnce })}</summary>
          <ul className="dated">{lines.slice(shownAtOnce).map(row)}</ul>
        </details>
      )}
    </section>
  );
}

function eventText(event: ColonyEvent, t: Wording['t'], names: Readonly<Record<string, string>>): string {
  const named = (id: string | null): string =>
    id === null ? t('event.unknown-colony') : (names[id] ?? t('event.unknown-colony'));
  switch (event.kind) {
    case 'fed':
      return event.amount === null
        ? t('event.fed', { what: t(`food.${event.what}` as TextKey) })
        : t('event.fed-amount', {
            what: t(`food.${event.what}` as TextKey),
            amount: `${event.amount.value} ${event.amount.unit}`,
          });
    case 'swarm left':
      return t(event.hived ? 'event.swarm-left-hived' : 'event.swarm-left');
    case 'swarm hived':
      return event.parent === null ? t('event.swarm-hived') : t('event.swarm-hived-from', { name: named(event.parent) });
    case 'split off':
      return t('event.split-off', { name: named(event.child), count: event.combs.length });
    case 'split from':
      return t('event.split-from', { name: named(event.parent), count: event.combs.length });
    case 'united into':
      return t('event.united-into', { name: named(event.into) });
    case 'took in':
      return t('event.took-in', { name: named(event.from) });
    case 'queen began':
      return t(`event.queen-${event.how}`);
    case 'queen ended':
      return t(`event.queen-ended-${event.how}`);
    case 'cells cut':
      return t('event.cells-cut');
    case 'comb fell':
      return t('event.comb-fell', {
        place: String(event.place),
        what: t(`fallen.${event.what}`),
        done: t(`fallen-done.${event.done}`),
      });
    case 'bee escape':
      return t(event.what === 'set' ? 'event.bee-escape-set' : 'event.bee-escape-out');
    case 'look':
      return lookText(event, t);
    case 'ended':
      return t(`event.ended-${event.how}`);
  }
}

function winterText(list: WinterList | undefined, answer: 'done' | 'not done', t: Wording['t']): string | null {
  const tasks = winterTasks.filter((task) => list?.[task] === answer);
  return tasks.length === 0 ? null : t(`event.winter-${answer}`, { list: tasks.map((task) => t(`winter.${task}`)).join(', ') });
}

function lookText(look: Extract<ColonyEvent, { readonly kind: 'look' }>, t: Wording['t']): string {
  const { seen, minute, window: pane, hum, dead } = look;
  const signs = seen.map((code) => t(`sign.${code}` as TextKey)).join(', ');
  const said = [seen.length === 0 ? t('event.look') : t('event.look-signs', { signs })];
  if (minute !== undefined) {
    const { seconds, in: cameIn, withPollen } = minute;
    const counted = { seconds, in: cameIn };
    said.push(
      withPollen === null
        ? t('event.look-minute', counted)
        : t('event.look-minute-pollen', { ...counted, laden: String(withPollen) }),
    );
  }
  if (pane !== undefined) said.push(t('event.look-window', { what: t(`write.window.${pane}`) }));
  if (hum !== undefined) said.push(t('event.look-hum', { what: t(`write.hum.${hum}`) }));
  if (dead !== undefined) said.push(t('event.look-dead', { what: t(`write.dead.${dead}`) }));
  return said.join(' ');
}
