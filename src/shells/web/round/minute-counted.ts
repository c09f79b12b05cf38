/** What was counted or typed of a minute at the entrance, as the look has it. */
export interface MinuteTyped {
  readonly seconds: number;
  readonly all: string;
  readonly laden: string;
}

export const wholeMinute = 60;
/** Less was hardly watched: it is not taken for a count. */
export const leastSeconds = 10;

export const nothingTyped: MinuteTyped = { seconds: wholeMinute, all: '', laden: '' };

export interface MinuteCounted {
  readonly seconds: number;
  readonly in: number;
  readonly withPollen: number | null;
}

/** Null when what was typed is no count. */
export function countedMinute({ seconds, all, laden }: MinuteTyped): MinuteCounted | 'not counted' | null {
  if (all.trim() === '' && laden.trim() === '') return 'not counted';
  const cameIn = wholeOf(all);
  const withPollen = laden.trim() === '' ? null : wholeOf(laden);
  if (cameIn === null || (laden.trim() !== '' && withPollen === null)) return null;
  if (withPollen !== null && withPollen > cameIn) return null;
  return { seconds, in: cameIn, withPollen };
}

function wholeOf(typed: string): number | null {
  return /^\d{1,4}$/.test(typed.trim()) ? Number(typed.trim()) : null;
}
