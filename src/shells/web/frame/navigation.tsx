/** The ways through the program, as a row of bars: below on a phone, where the thumb is; at the side on a laptop. */
import { Link, useLocation } from 'wouter';
import type { TextKey } from '../../../words/text.ts';
import { useText } from './manner.tsx';

const ways: readonly { readonly path: string; readonly also: string | null; readonly key: TextKey }[] = [
  { path: '/', also: '/colony', key: 'frame.round' },
  { path: '/sums', also: null, key: 'frame.sums' },
  { path: '/handbook', also: null, key: 'frame.handbook' },
  { path: '/journal', also: null, key: 'frame.journal' },
  { path: '/settings', also: null, key: 'frame.settings' },
];

export function Navigation() {
  const { t } = useText();
  const [location] = useLocation();
  return (
    <nav className="bars" aria-label={t('frame.ways')}>
      <span className="name" aria-hidden="true">
        Festoon
      </span>
      {ways.map(({ path, also, key }) => {
        const here =
          location === path || (path !== '/' && location.startsWith(path)) || (also !== null && location.startsWith(also));
        return (
          <Link key={path} href={path} aria-current={here ? 'page' : undefined}>
            {t(key)}
          </Link>
        );
      })}
    </nav>
  );
}
