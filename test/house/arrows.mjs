/**
 * Who may import whom: one row a folder of src, with the folders it may reach besides itself.
 * `write-arrows.mjs` turns the table into Biome overrides; `arrows.test.ts` proves that each forbidden arrow is refused.
 * A row is an allow-list; a folder that is not named may not be imported.
 */
const units = ['core/units']
const numbers = ['core/statistics']
const base = ['core/record', ...units]
const ground = [...base, 'core/formula', 'core/kitchen']
const weighed = [...ground, 'core/weighing', 'core/dough-temperature']
const planned = [...weighed, 'core/trial']
const seal = ['core/seal', 'core/seal/blind']
const worked = [
  ...planned,
  ...numbers,
  'core/design',
  'core/clock-plan',
  'core/session',
  ...seal,
  'core/tasting',
  'core/whole-trial',
  'core/plan-edits',
]
const judged = [
  ...worked,
  ...['core/house', 'core/fairness', 'core/findings', 'core/learned', 'core/lesson'],
]
const core = [...judged, 'core/figure', 'core/wording', 'core/report']
const keeping = [...core, 'trial-file', 'notebook', 'slip', 'slip-host']
const place = [...keeping, 'app/kit', 'app/charts', 'app/worker', 'app/services']

/** Packages that only faces and keepers of data may use; the core knows none of them. */
const screenPackages = ['react', 'react-dom', 'recharts', 'wouter', 'zustand', 'comlink']
const storePackages = ['dexie', 'dexie-react-hooks']
const outsideCore = [...screenPackages, ...storePackages, 'fflate']

/** @type {{ folder: string, may: string[], packages: string[] }[]} packages: those it must not import */
export const arrows = [
  { folder: 'core/units', may: [], packages: outsideCore },
  { folder: 'core/record', may: [], packages: outsideCore },
  { folder: 'core/statistics', may: [], packages: outsideCore },
  { folder: 'core/formula', may: base, packages: outsideCore },
  { folder: 'core/kitchen', may: base, packages: outsideCore },
  { folder: 'core/weighing', may: [...ground, 'core/trial'], packages: outsideCore },
  {
    folder: 'core/dough-temperature',
    may: [...ground, 'core/trial'],
    packages: outsideCore,
  },
  { folder: 'core/trial', may: ground, packages: outsideCore },
  { folder: 'core/design', may: [...ground, ...numbers, 'core/trial'], packages: outsideCore },
  { folder: 'core/clock-plan', may: [...ground, 'core/trial'], packages: outsideCore },
  {
    folder: 'core/session',
    may: [...ground, ...numbers, 'core/weighing', 'core/trial', 'core/design', 'core/clock-plan'],
    packages: outsideCore,
  },
  {
    folder: 'core/seal',
    may: [
      ...ground,
      ...numbers,
      ...['core/weighing', 'core/trial', 'core/design', 'core/clock-plan', 'core/session'],
      'core/seal/blind',
    ],
    packages: outsideCore,
  },
  { folder: 'core/seal/blind', may: [...base, 'core/trial'], packages: outsideCore },
  {
    folder: 'core/tasting',
    may: [...ground, 'core/trial', 'core/design', 'core/session', ...seal],
    packages: outsideCore,
  },
  {
    folder: 'core/whole-trial',
    may: [...ground, 'core/trial', 'core/design', 'core/session', ...seal, 'core/tasting'],
    packages: outsideCore,
  },
  { folder: 'core/table', may: base, packages: outsideCore },
  {
    folder: 'core/plan-edits',
    may: [...ground, 'core/weighing', 'core/trial', 'core/design'],
    packages: outsideCore,
  },
  { folder: 'core/house', may: [...planned, 'core/clock-plan'], packages: outsideCore },
  { folder: 'core/fairness', may: worked, packages: outsideCore },
  {
    folder: 'core/findings',
    may: [...worked, 'core/house', 'core/fairness'],
    packages: outsideCore,
  },
  {
    folder: 'core/learned',
    may: [...worked, 'core/fairness', 'core/findings'],
    packages: outsideCore,
  },
  { folder: 'core/lesson', may: worked, packages: outsideCore },
  { folder: 'core/figure', may: judged, packages: outsideCore },
  { folder: 'core/wording', may: [...judged, 'core/table'], packages: outsideCore },
  { folder: 'core/report', may: [...judged, 'core/figure', 'core/wording'], packages: outsideCore },
  { folder: 'serving', may: [], packages: outsideCore },
  { folder: 'trial-file', may: core, packages: [...screenPackages, ...storePackages] },
  {
    folder: 'slip',
    may: [...base, 'core/trial', ...seal],
    packages: [...screenPackages, ...storePackages],
  },
  /** The host's side: slips given out of a trial, and what comes back taken in through the notebook's own calls. */
  {
    folder: 'slip-host',
    may: [...core, 'trial-file', 'notebook', 'slip'],
    packages: [...screenPackages, ...storePackages],
  },
  {
    folder: 'table',
    may: ['core/record', 'core/table', 'slip'],
    packages: [...screenPackages, ...storePackages],
  },
  /** Between a notebook and a table: records out of it and into it, by its own calls; with a store of its own. */
  {
    folder: 'exchange',
    may: [...keeping, 'core/table', 'table'],
    packages: screenPackages.concat('dexie-react-hooks'),
  },
  {
    folder: 'hub',
    may: ['core/record', 'core/table', 'slip', 'table'],
    packages: [...screenPackages, ...storePackages],
  },
  { folder: 'notebook', may: [...core, 'trial-file'], packages: screenPackages },
  { folder: 'cli', may: [...core, 'trial-file'], packages: [...screenPackages, ...storePackages] },
  { folder: 'app/kit', may: core, packages: storePackages },
  { folder: 'app/charts', may: [...core, 'app/kit'], packages: storePackages },
  { folder: 'app/worker', may: [...core, 'trial-file'], packages: storePackages },
  { folder: 'app/services', may: keeping, packages: [] },
  { folder: 'app/home', may: place, packages: [] },
  { folder: 'app/kitchen', may: place, packages: [] },
  { folder: 'app/plan', may: place, packages: [] },
  { folder: 'app/bench', may: place, packages: [] },
  { folder: 'app/tasting', may: [...place, 'app/tasting/seat'], packages: [] },
  /** What a taster sees is made of a blind view alone: no record it was made from can be reached, nor the notebook. */
  {
    folder: 'app/tasting/seat',
    may: [...base, 'core/seal/blind', 'core/wording/tasting', 'app/kit'],
    packages: storePackages,
  },
  { folder: 'app/own', may: [...place, 'app/tasting/seat'], packages: [] },
  /** The one place that works open tables; a taster's ballot there is the one of own. */
  {
    folder: 'app/table',
    may: [...place, 'app/tasting/seat', 'app/own', 'core/table', 'table', 'exchange'],
    packages: [],
  },
  { folder: 'app/findings', may: place, packages: [] },
  { folder: 'app/report', may: place, packages: [] },
  { folder: 'app/house', may: place, packages: [] },
  {
    folder: 'app/frame',
    may: [
      ...place,
      ...[
        'home',
        'kitchen',
        'plan',
        'bench',
        'tasting',
        'tasting/seat',
        'own',
        'table',
        'findings',
        'report',
        'house',
      ].map((name) => `app/${name}`),
    ],
    packages: [],
  },
]

/** One folder's whole Biome override: a later override replaces an earlier one's options, so each block is complete. */
export function overrideOf({ folder, may, packages }) {
  const reachable = [folder, ...may].map((name) => `!@/${name}/**`)
  const patterns = [
    {
      group: ['@/**', ...reachable, '..', '../**'],
      message: `${folder} may not reach there: see test/house/arrows.mjs`,
    },
  ]
  const paths = Object.fromEntries(
    packages.map((name) => [name, `${folder} does without this package`]),
  )
  return {
    includes: [`src/${folder}/**`],
    linter: {
      rules: {
        style: { noRestrictedImports: { level: 'error', options: { paths, patterns } } },
      },
    },
  }
}
