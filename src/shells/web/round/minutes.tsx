/** For the minutes that the keeper has: which hives in which order, which bars in them and why, and what is left out. */
import type { ColonyView } from '../../../colony/view.ts';
import type { Id } from '../../../journal/entry.ts';
import { formatList } from '../../../words/format-place.ts';
import { usePreferences, useText } from '../frame/manner.tsx';
import { Choices } from '../frame/fields.tsx';
import { placesPart } from '../frame/parts.ts';
import { type DayPlan, minuteChoices } from '../model/shown.ts';
import { useYard } from '../model/use-yard.tsx';

export function Minutes({ views }: { readonly views: readonly ColonyView[] }) {
  const { t } = useText();
  const { preferences, prefer } = usePreferences();
  // A plan that an earlier build kept has another shape; the next picture brings one.
  const plans = useYard().roundDay.plans.filter((one) => 'stops' in one);
  const plan = plans.find((one) => one.minutes === preferences.minutes) ?? plans.at(-1) ?? null;
  return (
    <section className="minutes" aria-label={t('round.minutes')}>
      <Choices
        legend={t('round.minutes')}
        value={plan?.minutes ?? preferences.minutes}
        onChange={(value) => prefer({ minutes: value })}
        options={minuteChoices.map((value) => ({ value, label: String(value) }))}
      />
      {plan === null ? null : <Plan plan={plan} views={views} />}
    </section>
  );
}

function Plan({ plan, views }: { readonly plan: DayPlan; readonly views: readonly ColonyView[] }) {
  const { t, manner } = useText();
  const { stops, left, harmed, used } = plan;
  const nameOf = (colony: Id): string => views.find((view) => view.colony === colony)?.name ?? '';
  const names = (colonies: readonly Id[]): string => formatList(colonies.map(nameOf), manner);
  const lines = [
    stops.length > 0 ? t('plan.takes', { count: Math.ceil(used) }) : '',
    stops.length > 0 ? '' : t(left.length > 0 ? 'round.plan-too-short' : 'round.plan-nothing'),
    left.length > 0 ? t('plan.left', { names: names(left) }) : '',
    harmed.length > 0 ? t('plan.harmed', { names: names(harmed) }) : '',
  ];
  return (
    <div role="status">
      <ol className="plan plain-list">
        {stops.map((stop) => (
          <li key={stop.colony}>
            <b>{nameOf(stop.colony)}</b>, {t('plan.minutes', { count: Math.ceil(stop.minutes) })}. <Why stop={stop} />
          </li>
        ))}
      </ol>
      <p>{lines.filter((line) => line !== '').join(' ')}</p>
    </div>
  );
}

/** What is due by its own sentence; what the model asks by the bars that answer it. */
function Why({ stop: { says, asks, places, verb } }: { readonly stop: DayPlan['stops'][number] }) {
  const { t, say, manner } = useText();
  const words = formatList(
    asks.map((ask) => t(`advice.look.ask-${ask}`)),
    manner,
  );
  const what = verb === 'glance' ? 'plan.glance' : says.length === 0 ? 'plan.open' : 'plan.open-too';
  const look = asks.length === 0 ? [] : [t(what, { places: placesPart(places), asks: words })];
  return [...says.map((one) => say(one)), ...look].join(' ');
}
