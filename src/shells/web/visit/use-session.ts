/** The session and the hand as React sees them. */
import { createContext, useContext, useMemo, useState, useSyncExternalStore } from 'react';
import type { ColonyView } from '../../../colony/view.ts';
import { assert } from '../../../numbers/assert.ts';
import { type Hand, handOf } from './hand.ts';
import type { VisitPorts } from './ports.ts';
import { createSession, type Session, type SessionState } from './session.ts';

const HandContext = createContext<Hand | null>(null);
export const HandProvider = HandContext.Provider;

export function useHand(): Hand {
  const hand = useContext(HandContext);
  assert(hand, 'a part of the visit stands inside the HandProvider');
  return hand;
}

export function useSession(ports: VisitPorts, key: string): { readonly session: Session; readonly state: SessionState } {
  const [session] = useState(() => createSession(ports, key));
  const state = useSyncExternalStore(session.subscribe, session.state);
  return { session, state };
}

export function useNewHand(ports: VisitPorts, view: ColonyView, session: Session): Hand {
  return useMemo(() => handOf(ports, view, session), [ports, view, session]);
}
