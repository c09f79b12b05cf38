/** The address /demo: opens the demo yard and goes to its round; `festoon demo` prints it. */
import { useEffect, useRef } from 'react';
import { useLocation } from 'wouter';
import { usePreferences } from '../frame/manner.tsx';
import { useYard } from '../model/use-yard.tsx';

export function OpenDemo() {
  const { prefer } = usePreferences();
  const { openBook, book } = useYard();
  const [, go] = useLocation();
  const begun = useRef(false);
  useEffect(() => {
    if (begun.current) return;
    begun.current = true;
    prefer({ book: 'demo' });
    go('/', { replace: true });
    if (book !== 'demo') void openBook('demo');
  }, [prefer, openBook, book, go]);
  return null;
}
