/** Starts the screens: opens the book that was open last, and keeps the service worker up to date. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './frame/app.tsx';
import { PreferencesProvider } from './frame/manner.tsx';
import { around } from './model/around.ts';
import { warmEngine } from './model/engine.ts';
import { watchInstallOffers } from './model/install.ts';
import { readPreferences } from './model/preferences.ts';
import { YardProvider } from './model/use-yard.tsx';
import { createYardModel } from './model/yard-model.ts';
import 'virtual:themes.css';
import './styles/theme.css';
import './styles/frame.css';
import './styles/forms.css';
import './styles/round.css';
import './styles/colony.css';
import './styles/books.css';
import './styles/print.css';

watchInstallOffers();
const model = createYardModel(around);
const { book } = readPreferences();
if (book !== null) {
  warmEngine();
  void model.openBook(book);
}

document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'visible') void model.refresh();
});

const root = document.getElementById('root');
if (root !== null) {
  createRoot(root).render(
    <StrictMode>
      <YardProvider model={model}>
        <PreferencesProvider>
          <App />
        </PreferencesProvider>
      </YardProvider>
    </StrictMode>,
  );
}

// After an update the page may ask for a part that only the build before had: then it starts anew.
addEventListener('vite:preloadError', () => location.reload());

if ('serviceWorker' in navigator && import.meta.env.PROD) {
  addEventListener('load', () => {
    void navigator.serviceWorker.register('/sw.js').catch(() => undefined);
  });
}
