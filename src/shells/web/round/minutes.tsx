/** For the minutes that the keeper has: which hives, and which bars in them. */
import type { ColonyView } from '../../../colony/view.ts';
import { usePreferences, useText } from '../frame/manner.tsx';
import { Choices } from '../frame/fields.tsx';
import { placesPart } from '../frame/parts.ts';
import { minuteChoices } from '../model/shown.ts';
import { useYard } from '../model/use-yard.tsx';

export function Minutes({ views }: { readonly views: readonly ColonyView[] }) {
  const { t } = useText();
  const { preferences, prefer } = usePreferences();
  const { plans } = useYard().roundDay;
  const plan = plans.find((one) => one.minutes === preferences.minutes) ?? plans.at(-1) ?? null;
  const nameOf = (colony: string): string => views.find((view) => view.colony === colony)?.name ?? '';
  return (
    <section className="minutes" aria-label={t('round.minutes')}>
      <Choices
        legend={t('round.minutes')}
        value={plan?.minutes ?? preferences.minutes}
        onChange={(value) => prefer({ minutes: value })}
        options={minuteChoices.map((value) => ({ value, label: String(value) }))}
      />
      {plan === null ? null : (
        <p role="status">
          {plan.items.length === 0 ? t(plan.left > 0 ? 'round.plan-too-short' : 'round.plan-nothing') : null}
          {plan.items.map(({ colony, verb, places }, n) => (
            <span key={colony}>
              {t(n === 0 ? `plan.first-${verb}` : `plan.${verb}`, { name: nameOf(colony) })}
              {places.length === 0 ? '' : ` ${t('plan.bars', { places: placesPart(places) })}`}
              {n < plan.items.length - 1 ? ', ' : '. '}
            </span>
          ))}
          {plan.items.length === 0 ? '' : t('plan.takes', { count: plan.used })}
          {plan.items.length > 0 && plan.left > 0 ? ` ${t('plan.left', { count: plan.left })}` : ''}
        </p>
      )}
    </section>
  );
}
