/** For the minutes that the keeper has: which hives, and which bars in them. */
import { useMemo } from 'react';
import type { Stop } from '../../../apiary.ts';
import type { ColonyView } from '../../../colony/view.ts';
import { useText, usePreferences } from '../frame/manner.tsx';
import { Choices } from '../frame/fields.tsx';
import { placesPart } from '../frame/parts.ts';
import { useYard } from '../model/use-yard.tsx';
import { planFor } from './plan.ts';

const choices = [15, 30, 60, 90, 120] as const;

export function Minutes({ stops }: { readonly stops: readonly { readonly stop: Stop; readonly view: ColonyView }[] }) {
  const { t } = useText();
  const { preferences, prefer } = usePreferences();
  const { minutes } = useYard().aside;
  const plan = useMemo(() => planFor(stops, preferences.minutes, minutes), [stops, preferences.minutes, minutes]);
  return (
    <section className="minutes">
      <Choices
        legend={t('round.minutes')} value={preferences.minutes} onChange={(value) => prefer({ minutes: value })}
        options={choices.map((value) => ({ value, label: String(value) }))}
      />
      <p role="status">
        {plan.items.length === 0 ? t(plan.left > 0 ? 'round.plan-too-short' : 'round.plan-nothing') : plan.items.map(({ view, verb, places }, n) => (
          <span key={view.colony}>
            {t(n === 0 ? `plan.first-${verb}` : `plan.${verb}`, { name: view.name })}
            {places.length === 0 ? '' : ` ${t('plan.bars', { places: placesPart(places) })}`}
            {n < plan.items.length - 1 ? ', ' : '. '}
          </span>
        ))}
        {plan.items.length === 0 ? '' : t('plan.takes', { count: plan.minutes })}
        {plan.items.length > 0 && plan.left > 0 ? ` ${t('plan.left', { count: plan.left })}` : ''}
      </p>
    </section>
  );
}
