/**
 * The three themes of the screens and the print, as data: every colour and every line weight that a
 * drawing may use. Drawings name the custom property only, so one string serves all. The colours are
 * our own choice; the contrast test computes ink against each of them after WCAG 2.2.
 */
export const themeNames = ['paper', 'dusk', 'sun', 'print'] as const;
export type ThemeName = (typeof themeNames)[number];

/** Brood from cool (laid today) to warm (about to emerge); drone apart. */
export const broodTints = ['egg', 'larva', 'sealed', 'emerging', 'drone'] as const;
/** Food from wet to ripe. */
export const foodTints = ['nectar', 'honey', 'bread'] as const;
export const tints = [...broodTints, ...foodTints, 'bare', 'wood', 'band', 'core'] as const;
export const colours = ['paper', 'ink', 'soft', 'hair', 'act', 'warn', ...tints] as const;
export type Colour = (typeof colours)[number];

/** Line weights in pixels: marks drawn as seen, marks and edges worked out, edges of what is seen, the trough. */
export const weights = ['mark', 'fine', 'edge', 'rule'] as const;
export type Weight = (typeof weights)[number];

export interface Theme {
  readonly dark: boolean;
  readonly colours: Readonly<Record<Colour, string>>;
  readonly weights: Readonly<Record<Weight, number>>;
}

const usual: Readonly<Record<Weight, number>> = { mark: 0.85, fine: 0.5, edge: 0.9, rule: 1.5 };
const heavy: Readonly<Record<Weight, number>> = { mark: 0.95, fine: 0.6, edge: 1.3, rule: 2.2 };

function oneInk(ink: string, ground: string): Readonly<Record<Colour, string>> {
  const inks: readonly Colour[] = ['ink', 'soft', 'hair', 'act', 'warn'];
  return Object.fromEntries(colours.map((name) => [name, inks.includes(name) ? ink : ground])) as Record<Colour, string>;
}

export const themes: Readonly<Record<ThemeName, Theme>> = {
  paper: {
    dark: false,
    weights: usual,
    colours: {
      paper: '#fbf9f3',
      ink: '#1a1b1f',
      soft: '#52534f',
      hair: '#cbc5b6',
      act: '#1d5063',
      warn: '#93361d',
      egg: '#cfe4ea',
      larva: '#c9d2ea',
      sealed: '#ecd0bd',
      emerging: '#e2a684',
      drone: '#c8a7a4',
      nectar: '#dcecd5',
      honey: '#f3dc92',
      bread: '#dfbb83',
      bare: '#f3eee1',
      wood: '#d6b98c',
      band: '#dbe6e7',
      core: '#b3cdd3',
    },
  },
  dusk: {
    dark: true,
    weights: { mark: 0.85, fine: 0.58, edge: 0.9, rule: 1.4 },
    colours: {
      paper: '#1b1a1e',
      ink: '#f1e8d8',
      soft: '#bdb4a4',
      hair: '#504c4b',
      act: '#9ccbd3',
      warn: '#f0a184',
      egg: '#24474f',
      larva: '#343d63',
      sealed: '#5b3f33',
      emerging: '#7f4529',
      drone: '#5b3a42',
      nectar: '#2e4a36',
      honey: '#61501a',
      bread: '#65471f',
      bare: '#29272a',
      wood: '#5f4930',
      band: '#27363b',
      core: '#37525a',
    },
  },
  sun: { dark: false, weights: heavy, colours: oneInk('#000000', '#ffffff') },
  print: { dark: false, weights: heavy, colours: oneInk('#000000', '#ffffff') },
};

/** The theme as declarations of custom properties, to stand inside a rule: `:root{…}`. */
export function themeCss(name: ThemeName): string {
  const theme = themes[name];
  const lines = [
    `color-scheme:${theme.dark ? 'dark' : 'light'}`,
    ...colours.map((colour) => `--${colour}:${theme.colours[colour]}`),
    ...weights.map((weight) => `--${weight}:${theme.weights[weight]}`),
  ];
  return `${lines.join(';')};`;
}

/** A picture that stands alone, outside any page, with the theme inside it. */
export function withTheme(svg: string, name: ThemeName): string {
  return svg.replace(/^<svg[^>]*>/, (open) => `${open}<style>:root{${themeCss(name)}background:var(--paper)}</style>`);
}
