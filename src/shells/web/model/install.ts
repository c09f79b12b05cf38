/** The browser's offer to install comes once, early, and is kept here until Settings asks for it. */

interface InstallEvent extends Event {
  prompt(): Promise<unknown>;
}

let offer: (() => Promise<void>) | null = null;
const listeners = new Set<() => void>();

export function watchInstallOffers(): void {
  addEventListener('beforeinstallprompt', (event) => {
    event.preventDefault();
    set(async () => {
      set(null);
      await (event as InstallEvent).prompt();
    });
  });
  addEventListener('appinstalled', () => set(null));
}

export function offeredInstall(): (() => Promise<void>) | null {
  return offer;
}

export function onInstallOffer(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function set(next: (() => Promise<void>) | null): void {
  offer = next;
  for (const listener of listeners) listener();
}
