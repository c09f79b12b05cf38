/** Every source once; figures and checks point here by key. */
export interface Source {
  readonly who: string;
  readonly year: number;
  readonly title: string;
  readonly where: string;
  readonly doi?: string;
}

export const sources = {
  'fukuda-sakagami-1968': {
    who: 'Fukuda H., Sakagami S. F.', year: 1968,
    title: 'Worker brood survival in honeybees',
    where: 'Researches on Population Ecology 10:31–39', doi: '10.1007/BF02514731',
  },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceKey = keyof typeof sources;
