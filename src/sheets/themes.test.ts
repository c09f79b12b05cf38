/** Contrast and order of the tints of every theme, computed after WCAG 2.2; their harmony is for the eye. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { colours, themeCss, themeNames, themes, tints, withTheme } from './themes.ts';

/** Relative luminance and contrast after WCAG 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

test('D1 ink reads as text (4.5 to 1) on every tint of every theme, and so do the soft, act and warn inks on the paper', () => {
  assert.equal(Math.round(contrast('#000000', '#ffffff') * 10), 210);
  for (const name of themeNames) {
    const { colours: all } = themes[name];
    for (const tint of ['paper', ...tints] as const) {
      assert.ok(contrast(all.ink, all[tint]) >= 4.5, `${name} ${tint}: ${contrast(all.ink, all[tint])}`);
    }
    for (const ink of ['soft', 'act', 'warn'] as const) {
      assert.ok(contrast(all[ink], all.paper) >= 4.5, `${name} ${ink}: ${contrast(all[ink], all.paper)}`);
    }
    assert.ok(contrast(all.act, all.band) >= 3 && contrast(all.act, all.core) >= 3, `${name}: edges of bands`);
  }
});

test('D1 full sun and print are black and white and nothing between', () => {
  for (const name of ['sun', 'print'] as const) {
    for (const colour of colours) assert.match(themes[name].colours[colour], /^#(000000|ffffff)$/);
  }
});

test('D1 brood grows warmer as it ages and food as it ripens, in both coloured themes', () => {
  const warmth = (hex: string) => Number.parseInt(hex.slice(1, 3), 16) - Number.parseInt(hex.slice(5, 7), 16);
  for (const name of ['paper', 'dusk'] as const) {
    const all = themes[name].colours;
    const brood = [all.egg, all.larva, all.sealed, all.emerging].map(warmth);
    assert.ok(Math.max(brood[0] ?? 0, brood[1] ?? 0) < 0 && (brood[2] ?? 0) > 0, `${name}: open brood is cool, sealed warm`);
    assert.ok((brood[3] ?? 0) > (brood[2] ?? 0), `${name}: emerging is the warmest`);
    assert.ok(warmth(all.nectar) < warmth(all.honey), `${name}: ripe is warmer than wet`);
  }
});

test('D2 what is worked out is drawn finer than what is seen, in every theme', () => {
  for (const name of themeNames) {
    const { mark, fine, edge, rule } = themes[name].weights;
    assert.ok(fine <= mark * 0.7 && fine <= edge * 0.7 && edge < rule, name);
  }
});

test('D1 a theme is one list of custom properties, and a picture can carry it outside a page', () => {
  for (const name of themeNames) {
    const css = themeCss(name);
    for (const colour of colours) assert.ok(css.includes(`--${colour}:${themes[name].colours[colour]};`), `${name} ${colour}`);
  }
  const alone = withTheme('<svg class="a"><path/></svg>', 'dusk');
  assert.match(alone, /^<svg class="a"><style>:root\{color-scheme:dark;.*<\/style><path\/><\/svg>$/);
});
