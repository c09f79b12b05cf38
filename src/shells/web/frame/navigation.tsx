/** The ways through the program, as a row of bars: below on a phone, where the thumb is; at the side on a laptop. */
import { Link, useLocation } from 'wouter';
import type { TextKey } from '../../../words/text.ts';
import { useText } from './manner.tsx';

const ways: readonly { readonly path: string; readonly also: readonly string[]; readonly key: TextKey }[] = [
  { path: '/', also: ['/colony', '/record'], key: 'frame.round' },
  { path: '/sums', also: [], key: 'frame.sums' },
  { path: '/handbook', also: [], key: 'frame.handbook' },
  { path: '/journal', also: [], key: 'frame.journal' },
  { path: '/settings', also: [], key: 'frame.settings' },
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
          location === path || (path !== '/' && location.startsWith(path)) || also.some((start) => location.startsWith(start));
        return (
          <Link key={path} href={path} aria-current={here ? 'page' : undefined}>
            {t(key)}
          </Link>
        );
      })}
    </nav>
  );
}
