/** Texts of the record: how often forecasts were right, for one colony and for a year of the yard. */
export const recordTexts = {
  'record.title': 'How right was it',
  'record.year-title': 'The year’s forecasts',
  'record.year-link': 'How right the forecasts were',
  'record.lead':
    'A forecast is kept as it was issued at the end of each visit, and is scored by what a later visit found. Nothing is scored twice.',
  'record.none': 'No forecast has been met by a visit yet.',
  'record.waiting': 'Forecasts that no visit has met yet: {n}.',
  'record.year': 'Year',
  'record.all-years': 'all',
  'record.failed': 'The record could not be worked out.',
  'record.head-bees': 'Bees, about {days|a day|# days} ahead',
  'record.head-sealed': 'Sealed worker brood, about {days|a day|# days} ahead',
  'record.head-honeyKg': 'Honey, about {days|a day|# days} ahead',
  'record.inside': '{inside} of {n} fell inside their ranges, which should hold eight of ten.',
  'record.better': 'Typically off by a factor of {own}; “as last time” by {last}: better.',
  'record.no-better': '“As last time” is typically off by a factor of {last}, {way} by {own}: no better.',
  'record.open': 'Typically off by a factor of {own}; “as last time” by {last}: too few to say which is better.',
  'record.few': 'Too few to say whether it is better than “as last time”.',
  'record.brief-lead':
    'Inside: what came lay in the range that was forecast, which should hold eight of ten. ' +
    'Off by: the typical factor between forecast and what came.',
  'record.brief-better':
    '{days|A day|About # days} ahead: {inside} of {n} inside; off by {own}, “as last time” by {last}: better.',
  'record.brief-no-better':
    '{days|A day|About # days} ahead: “as last time” off by {last}, {way} by {own}: no better. {inside} of {n} inside.',
  'record.brief-open':
    '{days|A day|About # days} ahead: {inside} of {n} inside; off by {own}, “as last time” by {last}: too few to say which is better.',
  'record.brief-few': '{days|A day|About # days} ahead: {inside} of {n} inside; too few to say more.',
  'record.methods': 'Typical factor by which each was off',
  'record.method-engine': 'the model',
  'record.method-challenger': 'plain trend',
  'record.method-blend': 'model and trend together',
  'record.method-as last time': 'as last time',
  'record.shown': '{method}, drawn above',
  'record.factor': '×{factor}',
  'record.axis-bees': 'Bees, in thousands',
  'record.axis-sealed': 'Sealed worker brood, cells in thousands',
  'record.axis-honeyKg': 'Honey, kilograms',
  'record.chart': '{what}: forecasts of about {days|a day|# days} ahead, and what came',
  'record.chart-key':
    'Forecasts of about {days|a day|# days} ahead. Bracket: as forecast, eight of ten, with a tick at the likely number. ' +
    'Dot: what a visit found.',
  'record.dots': '{n|one forecast|# forecasts} of {what}: what came against what was forecast',
  'record.dots-fewer': 'half',
  'record.dots-as': 'as forecast',
  'record.dots-more': 'twice',
  'record.dots-key':
    'Each dot is one forecast, by what came of it: half as much, as forecast, twice as much. ' +
    'Full: inside its range. A ring: outside.',
} as const;
