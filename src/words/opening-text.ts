/** Which hours suit opening, in one sentence; never that the weather is safe. */
import type { OpeningHours, Stretch } from '../advice/suits-opening.ts';
import { formatNumber } from './format-number.ts';
import { formatHours } from './format-time.ts';
import { type Manner, plainManner } from './say.ts';
import { text } from './text.ts';

/** "Suits opening 11 to 16 h: 19 °C to 24 °C."; null hours ask for the temperatures. */
export function openingText(hours: OpeningHours | null, manner: Manner = plainManner): string {
  if (hours === null) return text('suits.unknown', {}, manner);
  if (hours.full !== null) return text('suits.full', stretch(hours.full, manner), manner);
  if (hours.brief !== null) return text('suits.brief', stretch(hours.brief, manner), manner);
  return text(hours.but === null ? 'suits.none' : `suits.${hours.but}`, {}, manner);
}

function stretch(given: Stretch, manner: Manner): Readonly<Record<string, string>> {
  return {
    hours: formatHours(given.from, given.to, manner),
    low: formatNumber(given.lowC, 'degC', true, manner),
    high: formatNumber(given.highC, 'degC', true, manner),
  };
}
