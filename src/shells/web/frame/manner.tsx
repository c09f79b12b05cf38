/**
 * How this device shows and says things: theme, units, clock. Screens take all their words from
 * `useText`, so that no sentence is made outside the catalogue.
 */
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import type { Saying } from '../../../advice/advice.ts';
import { assert } from '../../../numbers/assert.ts';
import type { Manner } from '../../../words/say.ts';
import { say, type SlotValue, text, type TextKey } from '../../../words/text.ts';
import { keepPreferences, type Preferences, readPreferences } from '../model/preferences.ts';
import { useYard } from '../model/use-yard.tsx';

interface UsedPreferences {
  readonly preferences: Preferences;
  readonly prefer: (part: Partial<Preferences>) => void;
}

const PreferencesContext = createContext<UsedPreferences | null>(null);

export function PreferencesProvider({ children }: { readonly children: ReactNode }) {
  const [preferences, setPreferences] = useState(readPreferences);
  useEffect(() => {
    document.documentElement.dataset['theme'] = preferences.theme;
  }, [preferences.theme]);
  const used = useMemo(
    () => ({
      preferences,
      prefer: (part: Partial<Preferences>) => {
        const next = { ...readPreferences(), ...part };
        keepPreferences(next);
        setPreferences(next);
      },
    }),
    [preferences],
  );
  return <PreferencesContext value={used}>{children}</PreferencesContext>;
}

export function usePreferences(): UsedPreferences {
  const used = useContext(PreferencesContext);
  assert(used, 'a screen stands inside the PreferencesProvider');
  return used;
}

export function useManner(): Manner {
  const { units, hours } = usePreferences().preferences;
  const { today } = useYard();
  return useMemo(() => ({ language: 'en', units, hours, today }), [units, hours, today]);
}

export interface Wording {
  /** The text of a key of the catalogue. */
  readonly t: (key: TextKey, slots?: Readonly<Record<string, SlotValue>>) => string;
  /** The sentence of a saying that the engine made. */
  readonly say: (saying: Saying) => string;
  readonly manner: Manner;
}

export function useText(): Wording {
  const manner = useManner();
  return useMemo(() => ({ t: (key, slots) => text(key, slots, manner), say: (saying) => say(saying, manner), manner }), [manner]);
}
