/** Builds the screens into build/web: the page, the engine's worker, and a service worker that knows what was built. */
import { createHash } from 'node:crypto';
import { defineConfig, type Plugin } from 'vite';
import { themeCss, themeNames } from './src/sheets/themes.ts';

const themesId = 'virtual:themes.css';

/** The sheets' themes as a stylesheet, so that the content policy need not allow styles made by scripts. */
function themes(): Plugin {
  return {
    name: 'festoon-themes',
    resolveId: (id) => (id === themesId ? `\0${themesId}` : null),
    load: (id) => {
      if (id !== `\0${themesId}`) return null;
      const screens = themeNames
        .filter((name) => name !== 'print')
        .map((name) => `:root[data-theme='${name}']{${themeCss(name)}}`);
      return [...screens, `@media print{:root[data-theme]{${themeCss('print')}}}`].join('\n');
    },
  };
}

/** Writes the list of what was built, and a version made from it, into the service worker. */
function assetsIntoServiceWorker(): Plugin {
  return {
    name: 'festoon-service-worker',
    apply: 'build',
    enforce: 'post',
    generateBundle: (_options, bundle) => {
      const worker = bundle['sw.js'];
      if (worker === undefined || worker.type !== 'chunk') throw new Error('the service worker was not built');
      const names = Object.keys(bundle)
        .filter((name) => name !== 'sw.js' && !name.endsWith('.map'))
        .sort();
      const paths = ['/', ...names.filter((name) => name !== 'index.html').map((name) => `/${name}`), ...fixed];
      const hash = createHash('sha256');
      for (const name of names) {
        const file = bundle[name];
        hash.update(name).update(file?.type === 'asset' ? file.source : (file?.code ?? ''));
      }
      worker.code = worker.code
        .replace(/(["'`])__ASSETS__\1/, JSON.stringify(JSON.stringify(paths)))
        .replace(/(["'`])__VERSION__\1/, JSON.stringify(hash.digest('hex').slice(0, 16)));
    },
  };
}

const fixed = ['/manifest.webmanifest', '/icon.svg', '/icon-180.png', '/icon-192.png', '/icon-512.png', '/icon-maskable-512.png'];

export default defineConfig({
  root: 'src/shells/web',
  publicDir: 'public',
  plugins: [themes(), assetsIntoServiceWorker()],
  worker: { format: 'es' },
  build: {
    outDir: '../../../build/web',
    emptyOutDir: true,
    target: 'es2023',
    sourcemap: false,
    assetsInlineLimit: 0,
    rolldownOptions: {
      input: { main: 'src/shells/web/index.html', sw: 'src/shells/web/worker/service-worker.ts' },
      output: { entryFileNames: (chunk) => (chunk.name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js') },
    },
  },
  server: { port: 5199, host: '127.0.0.1' },
});
