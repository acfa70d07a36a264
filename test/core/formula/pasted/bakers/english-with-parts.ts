import type { BakersFormula } from './bakers-formula.ts'

export const englishWithParts: readonly BakersFormula[] = [
  { text: 'Flour 2 kg\nWater 1.3 kg\nSalt 20 g per kg of flour', is: 'F2000 W1300 S40' },
  { text: 'Flour 2 x 500 g\nWater 640 g\nSalt 18 g', is: 'F1000 W640 S18' },
  {
    text: 'Flour 400 g\nMilk 200 ml\n2 eggs\nButter 60 g\nSalt 7 g',
    is: 'F400 L200 A60 S7',
    asks: ['pieces-not-weighed'],
  },
  {
    text: 'Flour 400 g\nMilk 200 ml\nEggs 100 g (2)\nButter 60 g, 82 % fat\nSalt 7 g',
    is: 'F400 L300 A60 S7',
  },
  {
    text: 'Flour 500 g\nWater 325 g\nSalt 10 g\nFlour for dusting 30 g\nSemolina for the peel',
    is: 'F500 W325 S10',
  },
  {
    text: 'Dough\nFlour 500 g\nWater 325 g\nSalt 10 g\n\nTopping\nCheese 200 g\nTomatoes 300 g',
    is: 'F500 W325 S10',
  },
  { text: 'Makes 4 balls of 210 g\nFlour 500 g\nWater 325 g\nSalt 15 g', is: 'F500 W325 S15' },
  {
    text: 'Makes 6 balls of 250 g\nFlour 500 g\nWater 325 g\nSalt 15 g',
    is: 'F500 W325 S15',
    doubts: ['pieces'],
  },
  {
    text: 'Flour 500 g\nWater 325 g\nSalt 10 g\nyeast 3 g',
    is: 'F500 W325 S10 Y3',
    doubts: ['yeast-form'],
  },
  {
    text: '20 g fresh yeast or 7 g dry yeast\n500 g flour\n300 g water',
    is: 'F500 W300',
    asks: ['one-or-the-other'],
  },
  {
    text: '500 g flour\n300 g water\n50 g walnuts (optional)',
    is: 'F500 W300',
    asks: ['if-wanted'],
  },
  {
    text: '2 cups flour\n200 g water',
    is: 'W0',
    asks: ['cups-and-spoons', 'weight-without-flour'],
  },
  { text: '500 g flour\n300-350 g water\n10 g salt', is: 'F500 S10', asks: ['range'] },
  { text: '500 g flour\n350 g water\nsalt to taste', is: 'F500 W350', asks: ['no-amount'] },
  { text: '500 g flour\n350 g water\n10 g zorbel', is: 'F500 W350', asks: ['unknown-kind'] },
  {
    text: '500 g flour\n350 g water\n10 g salt\n1. Mix the flour with the water.\n2. Rest 30 min.\n3. Fold 3 times.\nBake 40 minutes at 240 °C',
    is: 'F500 W350 S10',
  },
  {
    text: 'Ingredients\n500 g flour\n350 g water\n10 g salt\nMethod\nMix 500 g flour with 350 g water.\nProof 2 h.',
    is: 'F500 W350 S10',
  },
  { text: 'Mix 500 g flour with 350 g water and 10 g salt.', is: 'W0', asks: ['in-a-sentence'] },
  {
    text: 'Ingredient | Poolish | Dough | Total\nFlour (g) | 300 | 700 | 1000\nWater (g) | 300 | 400 | 700\nSalt (g) | - | 20 | 20',
    is: 'F1000 W700 S20',
    ahead: { Poolish: [30, 100] },
  },
  {
    text: 'Ingredient\tPoolish (g)\tFinal dough (g)\nFlour\t300\t700\nWater\t300\t380\nInstant yeast\t0.3\t2\nSalt\t\t20',
    is: 'F1000 W680 S20 Y2.3',
    ahead: { Poolish: [30, 100] },
  },
  {
    text: 'Biga 12 h:\n400 g strong flour\n180 g water\n4 g fresh yeast\n\nfinal dough:\n100 g strong flour\n170 g water\n11 g salt',
    is: 'F500 W350 S11 Y4',
    ahead: { Biga: [80, 45] },
  },
  {
    text: 'Overall formula\nFlour 1000 g\nWater 700 g\nSalt 20 g\nPoolish\nFlour 200 g\nWater 200 g\nFinal dough\nFlour 800 g\nWater 500 g\nSalt 20 g\nPoolish 400 g',
    is: 'F1000 W700 S20',
    ahead: { Poolish: [20, 100] },
  },
  {
    text: 'Flour 90 %\nWater 60 %\nSalt 2 %\nLevain 20 % (100 % hydration)',
    is: 'F1000 W700 S20',
    ahead: { Levain: [10, 100] },
  },
  {
    text: 'Flour 60 %\nWholemeal 30 %\nWater 65 %',
    is: `F1000 W${650 / 0.9}`,
    doubts: ['flours-percent'],
  },
  {
    text: 'Rye sour (80 % hydration) 180 g\nWheat flour 400 g\nWater 270 g\nSalt 10 g',
    is: 'F500 W350 S10',
    ahead: { 'Rye sour': [20, 80] },
  },
  {
    text: 'Semola 300 g\nStrong white 200 g\nIce 50 g\nWater 275 g\nSalt 10 g',
    is: 'F500 W325 S10',
  },
  {
    text: 'Tangzhong\n25 g flour\n125 g milk\n\nDough\n475 g flour\n180 g milk\n60 g butter\n8 g salt',
    is: 'F500 L305 A60 S8',
    ahead: { Tangzhong: [5, 0] },
  },
  {
    text: 'Soaker\n100 g sunflower seeds\n100 g water\n\nDough\n500 g flour\n300 g water\n12 g salt',
    is: 'F500 W400 S12 O100',
  },
  {
    text: 'Levain 10 h:\n30 g starter (100 % hydration)\n135 g flour\n135 g water\n\nDough:\n850 g flour\n550 g water\n20 g salt\nLevain 300 g',
    is: 'F1000 W700 S20',
    ahead: { Levain: [15, 100] },
  },
  {
    text: 'Levain:\n100 g flour\n100 g water\n\nDough:\n450 g flour\n300 g water\n10 g salt\n100 g levain',
    is: 'F500 W350 S10',
    ahead: { Levain: [10, 100] },
  },
  {
    text: 'Levain:\n50 g flour\n50 g water\n\nDough:\n450 g flour\n300 g water\n10 g salt\n150 g levain',
    is: 'F525 W375 S10',
    ahead: { Levain: [7500 / 525, 100] },
    doubts: ['more-than-built'],
  },
  {
    text: 'Flour: 500 (100%)\nWater: 350 (70%)\nSalt: 10 (2%)',
    is: 'F0',
    asks: ['pieces-not-weighed', 'pieces-not-weighed', 'pieces-not-weighed'],
  },
  {
    text: 'Autolyse:\n500 g flour\n325 g water\nThen add:\n10 g salt\n25 g water\n100 g levain (100% hydration)',
    is: 'F550 W400 S10',
    ahead: { levain: [5000 / 550, 100] },
  },
  {
    text: 'Stage 1\nrye 95 g\nwater 95 g\nstarter 10 g (100 % hydration)\nStage 2\nrye 200 g\nwater 160 g\nall of stage 1\nFinal dough\nwheat flour 700 g\nwater 440 g\nsalt 20 g',
    is: 'F1000 W700 S20',
    ahead: { 'Stage 1': [10, 100], 'Stage 2': [20, 80] },
  },
  { text: '3 1/4 lb flour\n2 lb 4 oz water', is: 'F1474.1752025 W1020.5828325' },
]
