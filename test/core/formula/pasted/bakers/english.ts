import type { BakersFormula } from './bakers-formula.ts'

export const english: readonly BakersFormula[] = [
  {
    text: 'Bread flour 500 g\nWater 350 g\nSalt 10 g\nInstant yeast 3 g',
    is: 'F500 W350 S10 Y3',
    yeast: 'instant',
  },
  {
    text: '500g strong white\n325g water\n10g salt\n7g fresh yeast',
    is: 'F500 W325 S10 Y7',
    yeast: 'fresh',
  },
  {
    text: '# Club focaccia\n\n- [ ] 600 g plain flour\n- [ ] 480 g water\n- [x] 12 g salt\n- [ ] 4 g instant yeast\n- [ ] 30 g olive oil\n\nBake 25 min at 230 °C',
    is: 'F600 W480 S12 Y4 A30',
  },
  {
    text: '1. Flour 1 kg\n2. Water 650 g\n3. Salt 20 g\n4. Dry yeast 5 g',
    is: 'F1000 W650 S20 Y5',
    yeast: 'instant',
  },
  {
    text: 'Ingredient\tg\t%\nFlour\t800\t100\nWater\t560\t70\nSalt\t16\t2\nTotal\t1376\t172',
    is: 'F800 W560 S16',
  },
  {
    text: 'Ingredient | Grams | Baker %\n--- | --- | ---\nWhole wheat flour | 300 | 60\nRye | 200 | 40\nWater | 400 | 80\nSalt | 10 | 2',
    is: 'F500 W400 S10',
  },
  {
    text: 'ingredient,grams,percent\nflour,1000,100\nwater,680,68\nsalt,22,2.2',
    is: 'F1000 W680 S22',
  },
  { text: 'Ingredient g %\nFlour 500 100\nWater 350 70\nSalt 10 2', is: 'F500 W350 S10' },
  {
    text: 'Baker’s %   g   Ingredient\n100   400   flour\n72.5   290   water\n2   8   salt',
    is: 'F400 W290 S8',
  },
  {
    text: 'All amounts in grams\nFlour 450\nWater 300\nSalt 9\nInstant yeast 2',
    is: 'F450 W300 S9 Y2',
  },
  {
    text: 'Flour 100%\nWater 66%\nSalt 2%\nInstant yeast 0.5%\nOil 4%',
    is: 'F1000 W660 S20 Y5 A40',
  },
  { text: 'flour 100 %, water 65 %, salt 2 %', is: 'F1000 W650 S20' },
  { text: '500 g flour, 350 g water, 10 g salt and 3 g instant yeast', is: 'F500 W350 S10 Y3' },
  {
    text: 'Poolish: 200 g flour, 200 g water, 0.2 g instant yeast\nDough: 300 g flour, 150 g water, 10 g salt, 1 g instant yeast',
    is: 'F500 W350 S10 Y1.2',
    ahead: { Poolish: [40, 100] },
  },
  {
    text: 'Poolish (12 h at 18 °C)\n250 g flour\n250 g water\n0.3 g instant yeast\n\nFinal dough\n750 g flour\n420 g water\n20 g salt\nall of the poolish',
    is: 'F1000 W670 S20 Y0.3',
    ahead: { Poolish: [25, 100] },
  },
  {
    text: 'Levain\n50 g rye flour\n50 g water\n\nDough\n450 g bread flour\n300 g water\n10 g salt\n100 g levain',
    is: 'F500 W350 S10',
    ahead: { Levain: [10, 100] },
  },
  {
    text: 'Flour 450 g\nWater 300 g\nSourdough starter (100 % hydration) 100 g\nSalt 10 g',
    is: 'F500 W350 S10',
    ahead: { 'Sourdough starter': [10, 100] },
  },
  {
    text: 'Flour 450 g\nWater 300 g\nstiff starter at 50 % hydration 150 g\nSalt 10 g',
    is: 'F550 W350 S10',
    ahead: { 'stiff starter': [100 / 5.5, 50] },
  },
  {
    text: 'Flour 450 g\nWater 300 g\nStarter 100 g\nSalt 10 g',
    is: 'F450 W300 S10',
    asks: ['hydration-unsaid'],
  },
  {
    text: 'Flour 450 g\nWater 300 g\nLevain 100 g (50 g rye flour + 50 g water)\nSalt 10 g',
    is: 'F500 W350 S10',
    ahead: { Levain: [10, 100] },
  },
  {
    text: 'Flour 450 g\nWater 300 g\nstarter (1:5:5) 110 g\nSalt 10 g',
    is: 'F505 W355 S10',
    ahead: { starter: [5500 / 505, 100] },
  },
  { text: '1 lb flour\n11 oz water\n½ oz salt', is: 'F453.59237 W311.844754375 S14.1747615625' },
  {
    text: '2 1/2 lb flour\n1 3/4 lb water\n1 oz salt',
    is: 'F1133.980925 W793.7866475 S28.349523125',
  },
  { text: 'Flour 1,200 g\nWater 800 g', is: 'W0', asks: ['two-readings', 'weight-without-flour'] },
  { text: 'Flour 1,200 kg\nWater 0.8 l\nSalt 24 g', is: 'F1200 W800 S24' },
  { text: 'Flour 500 g\nWater 340 g + 35 g\nSalt 10 g', is: 'F500 W375 S10' },
  {
    text: 'Flour 1000 g\nWater 680 + 70 g = 750 g\nSalt 22 g\nHydration 75 %',
    is: 'F1000 W750 S22',
  },
  {
    text: 'Flour 500 g\nWater 350 g\nSalt 10 g\nHydration 75 %',
    is: 'F500 W350 S10',
    doubts: ['hydration'],
  },
  {
    text: 'Flour 500 g\nWater 350 g\nSalt 10 g\nTotal dough 900 g',
    is: 'F500 W350 S10',
    doubts: ['total'],
  },
  {
    text: 'Flour 500 g (100 %)\nWater 350 g (70 %)\nSalt 15 g (2 %)',
    is: 'F500 W350 S15',
    doubts: ['percent'],
  },
  {
    text: 'Flour 500 g\nWater 300 g\nSugar 60 g (12 % of flour)\nSalt 9 g',
    is: 'F500 W300 S9 O60',
  },
]
