/**
 * Every source once; figures and checks point here by key. A page of a club, an extension service or a
 * trade journal is given by what it is; how far a figure was read in it stands beside the figure. A title in
 * square brackets is not the work's own: it says what the work is about. A page without a date has year null.
 */
export interface Source {
  readonly who: string;
  /** Null for a page without a date. */
  readonly year: number | null;
  readonly title: string;
  readonly where: string;
  readonly doi?: string;
}

export const sources = {
  'fukuda-sakagami-1968': {
    who: 'Fukuda H., Sakagami S. F.',
    year: 1968,
    title: 'Worker brood survival in honeybees',
    where: 'Researches on Population Ecology 10:31–39',
    doi: '10.1007/BF02514731',
  },
  'chuda-samborski-2015': {
    who: 'Chuda-Mickiewicz B., Samborski J.',
    year: 2015,
    title: '[Quality of queens from cells incubated at 34.5 and 32 °C]',
    where: 'Acta Scientiarum Polonorum Zootechnica 14(4):25–32',
  },
  'stabentheiner-2021': {
    who: 'Stabentheiner A. and others',
    year: 2021,
    title: '[Review of brood warmth and heat production of honeybees]',
    where: 'Journal of Comparative Physiology A',
    doi: '10.1007/s00359-021-01464-8',
  },
  'page-peng-2001': {
    who: 'Page R. E., Peng C. Y.-S.',
    year: 2001,
    title: 'Aging and development in social insects, the honey bee',
    where: 'Experimental Gerontology 36:695–711',
  },
  'yamada-2019': {
    who: 'Yamada T. and others',
    year: 2019,
    title: '[Apparent longevity of bees in a colony, with a list of lifespans from the literature]',
    where: 'Scientific Reports 9',
    doi: '10.1038/s41598-019-40725-0',
  },
  'abou-shaara-2014': {
    who: 'Abou-Shaara H. F.',
    year: 2014,
    title: 'The foraging behaviour of honey bees: a review',
    where: 'Veterinarni Medicina 59:1–10',
  },
  'prado-2020': {
    who: 'Prado A. and others',
    year: 2020,
    title: '[Lifetime losses of tagged honeybees, before and during foraging]',
    where: 'Royal Society Open Science 7',
  },
  'drone-life-1988': {
    who: 'Journal of Apicultural Research',
    year: 1988,
    title: '[Acceptance and life of marked drones put into colonies]',
    where: 'Journal of Apicultural Research 27:219–226',
    doi: '10.1080/00218839.1988.11100806',
  },
  'winston-1987': {
    who: 'Winston M. L.',
    year: 1987,
    title: 'The Biology of the Honey Bee',
    where: 'Harvard University Press',
  },
  'imdorf-2008': {
    who: 'Imdorf A., Ruoff K., Fluri P.',
    year: 2008,
    title: '[Growth of the honeybee colony]',
    where: 'ALP forum 68, table 5',
  },
  'szabo-1987': {
    who: 'Szabo T. I., Mills P. F., Heikel D. T.',
    year: 1987,
    title: '[Age of queens at first oviposition]',
    where: 'Journal of Apicultural Research 26:73–78',
  },
  'connor-colony-development': {
    who: 'Connor L.',
    year: null,
    title: 'Colony development I',
    where: 'Bee Culture',
  },
  'beebook-queens-2013': {
    who: 'Büchler R. and others',
    year: 2013,
    title: 'Standard methods for rearing and selection of Apis mellifera queens',
    where: 'Journal of Apicultural Research 52(1):1–30',
    doi: '10.3896/IBRA.1.52.1.07',
  },
  'beebook-behaviour-2013': {
    who: 'Scheiner R. and others',
    year: 2013,
    title: 'Standard methods for behavioural studies of Apis mellifera',
    where: 'Journal of Apicultural Research 52(4), section 13.2',
  },
  'miller-ratnieks-2001': {
    who: 'Miller D. G., Ratnieks F. L. W.',
    year: 2001,
    title: 'The timing of worker reproduction and breakdown of policing',
    where: 'Insectes Sociaux 48:178–184',
  },
  'rangel-seeley-2012': {
    who: 'Rangel J., Seeley T. D.',
    year: 2012,
    title: 'Colony fissioning in honey bees: size and significance of the swarm fraction',
    where: 'Insectes Sociaux 59:453–462',
    doi: '10.1007/s00040-012-0239-5',
  },
  'seeley-morse-1976': {
    who: 'Seeley T. D., Morse R. A.',
    year: 1976,
    title: 'The nest of the honey bee',
    where: 'Insectes Sociaux 23:495–512',
  },
  'seeley-2019': {
    who: 'Seeley T. D.',
    year: 2019,
    title: 'The Lives of Bees',
    where: 'Princeton University Press, pages 116–117',
  },
  'smith-2014': {
    who: 'Smith M. L. and others',
    year: 2014,
    title: 'A critical number of workers in a honeybee colony triggers investment in reproduction',
    where: 'Naturwissenschaften',
  },
  'bfd-journal': {
    who: 'Bees for Development',
    year: 2009,
    title: '[Plans and notes on top-bar hives]',
    where: 'Bees for Development Journal 66 (2003), 93 (2009), 118 (2016)',
  },
  'ethiopia-spacing-2019': {
    who: 'American Journal of Life Sciences',
    year: 2019,
    title: '[Comb spacing and cells of an African race on top bars]',
    where: 'American Journal of Life Sciences 7(3)',
    doi: '10.11648/j.ajls.20190703.12',
  },
  'bogdanov-beeswax': {
    who: 'Bogdanov S.',
    year: null,
    title: 'The Beeswax Book',
    where: 'bee-hexagon.net',
  },
  'nova-nest': {
    who: 'NOVA',
    year: null,
    title: '[Anatomy of a hive, after studies of natural nests]',
    where: 'PBS companion page',
  },
  'betts-1938': {
    who: 'Betts A. D.',
    year: 1938,
    title: '[Table of cells a square decimetre by cells along 10 cm]',
    where: 'Bee World, pages 106–107',
  },
  'zander-eighths': {
    who: 'German-language teaching pages',
    year: null,
    title: '[Estimating by eighths of a comb side of about 8 dm²]',
    where: 'two association pages that agree',
  },
  'swiss-strength-page': {
    who: 'Swiss teaching page on the Liebefeld estimate',
    year: null,
    title: '[Bees and cells a square decimetre of comb side]',
    where: 'after Imdorf and Gerig, course sheet 99-e',
  },
  'illinois-queens': {
    who: 'Illinois Queen Initiative',
    year: null,
    title: '[Laying rate from the area of sealed brood]',
    where: 'teaching page',
  },
  'burgett-burikam-1985': {
    who: 'Burgett M., Burikam I.',
    year: 1985,
    title: 'Number of adult honey bees occupying a comb',
    where: 'Journal of Economic Entomology 78:1154–1156',
  },
  'simpson-1969': {
    who: 'Simpson J.',
    year: 1969,
    title: 'The amounts of hive-space needed by colonies',
    where: 'Journal of Apicultural Research 8:3–8',
  },
  'mitchell-1970': {
    who: 'Mitchell C.',
    year: 1970,
    title: '[Weights of workers and drones]',
    where: 'American Bee Journal 110',
  },
  'lee-2019': {
    who: 'Lee K. V. and others',
    year: 2019,
    title: 'Is the brood pattern within a colony a reliable indicator of queen quality?',
    where: 'Insects 10:12',
    doi: '10.3390/insects10010012',
  },
  'tarpy-page-2002': {
    who: 'Tarpy D. R., Page R. E.',
    year: 2002,
    title: 'Sex determination and the evolution of polyandry in honey bees',
    where: 'Behavioral Ecology and Sociobiology 52:143–150',
  },
  'nest-section-page': {
    who: 'A page on the nest seen in section',
    year: null,
    title: '[What the cells of the brood area hold]',
    where: 'second-hand, its reference 2',
  },
  'whitcomb-1946': {
    who: 'Whitcomb W.',
    year: 1946,
    title: 'Feeding bees for comb production',
    where: 'Gleanings in Bee Culture',
  },
  'crude-cappings': {
    who: 'New Zealand producers',
    year: null,
    title: '[Crude cappings a tonne of honey]',
    where: 'trade page',
  },
  'norrstrom-2021': {
    who: 'Norrström N. and others',
    year: 2021,
    title: '[Food use of wintering colonies against temperature and light]',
    where: 'PLoS ONE 16(10):e0258398',
    doi: '10.1371/journal.pone.0258398',
  },
  'southwick-1985': {
    who: 'Southwick E. E.',
    year: 1985,
    title: 'Allometric relations, metabolism and heat conductance in clusters of honey bees',
    where: 'Journal of Comparative Physiology B 156:143–149',
    doi: '10.1007/BF00692937',
  },
  'louisiana-winter': {
    who: 'Louisiana winter cage study',
    year: null,
    title: '[Honey eaten a bee and day in winter by colony size]',
    where: 'abstract',
  },
  debnam: {
    who: 'Debnam S. and others',
    year: null,
    title: 'Energetic costs of raising brood',
    where: 'University of Montana, abstract',
  },
  'moeller-1977': {
    who: 'Moeller F. E.',
    year: 1977,
    title: 'Overwintering of honey bee colonies',
    where: 'USDA Production Research Report 169',
  },
  'visscher-1995': {
    who: 'Visscher P. K., Vetter R. S., Robinson G. E.',
    year: 1995,
    title: '[Alarm odour and smoke at the antenna]',
    where: 'Journal of Insect Behavior 8:11–18',
    doi: '10.1007/BF01990966',
  },
  'cornell-calendar': {
    who: 'Cornell University',
    year: null,
    title: 'Beekeeping calendar for the Northeast',
    where: 'extension sheet, January',
  },
  'burrill-dietz-1981': {
    who: 'Burrill R. M., Dietz A.',
    year: 1981,
    title: 'The response of honey bees to variations in solar radiation and temperature',
    where: 'Apidologie 12, as given in the COLOSS BEEBOOK',
  },
  'vicens-bosch-2000': {
    who: 'Vicens N., Bosch J.',
    year: 2000,
    title: 'Weather-dependent pollinator activity in an apple orchard',
    where: 'Environmental Entomology 29:413–420',
  },
  'hennessy-2020': {
    who: 'Hennessy G. and others',
    year: 2020,
    title: 'Gone with the wind: effects of wind on honey bee visit rate',
    where: 'Animal Behaviour 161:23–31',
  },
  'development-pages': {
    who: 'Club and extension pages',
    year: null,
    title: '[Days of development by caste]',
    where: 'several pages that agree within a day',
  },
  'queen-pages': {
    who: 'Club and trade pages',
    year: null,
    title: '[Timetables of queens, drones and swarms]',
    where: 'several pages that agree within a few days',
  },
  'learners-table': {
    who: 'A page for learners',
    year: null,
    title: '[Days as egg, open larva and sealed, by caste]',
    where: 'one page; its days sum up',
  },
  'school-swarm-sum': {
    who: 'A club page',
    year: null,
    title: '[A colony of 30 000 before and after a swarm, worked out]',
    where: 'worked example',
  },
  kauffeld: {
    who: 'Kauffeld N. M.',
    year: null,
    title: '[Bees on a deep comb in a single layer]',
    where: 'as Burgett and Burikam (1985) give it',
  },
  'bbka-news': {
    who: 'British Beekeepers Association',
    year: null,
    title: '[Honey in a full comb of several hives]',
    where: 'BBKA News',
  },
  'newcombe-1998': {
    who: 'Newcombe R. G.',
    year: 1998,
    title: 'Two-sided confidence intervals for the single proportion',
    where: 'Statistics in Medicine 17:857–872, table I',
  },
  'danish-scale-hive': {
    who: "A keeper's log",
    year: 2013,
    title: '[Weight of one hive in Denmark, November and December]',
    where: 'page',
  },
  'welsh-scale-hives': {
    who: 'An association in North Wales',
    year: 2014,
    title: '[Weight of three colonies through a winter]',
    where: 'page',
  },
  'czech-scale-hives': {
    who: 'A quarry wildlife project',
    year: 2018,
    title: '[Weight of two hives through a Czech winter]',
    where: 'report',
  },
  'khoury-2011': {
    who: 'Khoury D. S., Myerscough M. R., Barron A. B.',
    year: 2011,
    title: 'A quantitative model of honey bee colony population dynamics',
    where: 'PLoS ONE 6(4):e18491',
    doi: '10.1371/journal.pone.0018491',
  },
  'khoury-2013': {
    who: 'Khoury D. S., Barron A. B., Myerscough M. R.',
    year: 2013,
    title: 'Modelling food and population dynamics in honey bee colonies',
    where: 'PLoS ONE 8(5):e59084',
    doi: '10.1371/journal.pone.0059084',
  },
  'balance-scripts': {
    who: 'Teaching and research scripts',
    year: null,
    title: '[Scripts that work through the two balances of a colony]',
    where: 'public repositories',
  },
  'mark-colour-pages': {
    who: 'Club and trade pages',
    year: null,
    title: '[The international row of queen marking colours]',
    where: 'several pages that agree',
  },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceKey = keyof typeof sources;
