/**
 * Whether a request was meant for this server. A page elsewhere can make a browser send requests
 * here, also under a name of its own that it points at this machine; so the Host must be a name or
 * address of ours, and an Origin must be the very same host.
 */
import { hostname, networkInterfaces } from 'node:os';
import type { Issue } from '../../numbers/result.ts';

const loopbackNames: readonly string[] = ['localhost', '127.0.0.1', '[::1]'];

export function isLoopbackAddress(address: string): boolean {
  return address === '::1' || /^(::ffff:)?127\./.test(address);
}

export function isLoopbackHost(host: string): boolean {
  return host === 'localhost' || isLoopbackAddress(host.replace(/^\[|\]$/g, ''));
}

/** The names under which a server that listens on `host` may be called. */
export function ownNames(host: string): ReadonlySet<string> {
  if (isLoopbackHost(host)) return new Set(loopbackNames);
  const addresses = Object.values(networkInterfaces()).flatMap((cards) => (cards ?? []).map((card) => card.address));
  const own = hostname().toLowerCase();
  return new Set([...loopbackNames, bracketed(host), own, `${own}.local`, ...addresses.map(bracketed)]);
}

/** What another device can type after `https://`: this machine's names and addresses, without those that only it knows. */
export function namesForOthers(host: string): readonly string[] {
  const everywhere = ['0.0.0.0', '[::]', '::'];
  return [...ownNames(host)].filter(
    (name) => !loopbackNames.includes(name) && !everywhere.includes(name) && !name.startsWith('[fe80'),
  );
}

function bracketed(address: string): string {
  return address.includes(':') && !address.startsWith('[') ? `[${address.toLowerCase()}]` : address.toLowerCase();
}

export interface Asked {
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** Sec-Fetch-Site: what the browser itself says about where the request comes from. */
  readonly site: string | undefined;
}

/** Null when the request may go on. */
export function strangerIssue(asked: Asked, names: ReadonlySet<string>): Issue | null {
  const host = (asked.host ?? '').toLowerCase();
  const name = host.replace(/:\d{1,5}$/, '').replace(/\.$/, '');
  if (!names.has(name)) {
    return {
      code: 'wrong-host',
      path: 'Host',
      found: host === '' ? 'nothing' : host.slice(0, 80),
      expected: 'a name or address of this machine',
    };
  }
  const foreign = asked.site === 'cross-site' || asked.site === 'same-site';
  if (foreign || (asked.origin !== undefined && hostOf(asked.origin) !== host)) {
    return {
      code: 'wrong-origin',
      path: 'Origin',
      found: (asked.origin ?? asked.site ?? '').slice(0, 80),
      expected: 'a page that came from this server',
    };
  }
  return null;
}

function hostOf(origin: string): string | null {
  return URL.canParse(origin) ? new URL(origin).host : null;
}
