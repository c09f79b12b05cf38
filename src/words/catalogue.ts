/** Which text belongs to a key, in the language asked for; and nothing about what fills its slots. */
import { english } from './en/list.ts';
import type { Manner } from './say.ts';

export type TextKey = keyof typeof english;

const catalogues: Readonly<Record<Manner['language'], Readonly<Record<TextKey, string>>>> = { en: english };

export function isTextKey(key: string): key is TextKey {
  return Object.hasOwn(english, key);
}

export function templateOf(key: TextKey, manner: Manner): string {
  return catalogues[manner.language][key];
}
