import type { BakersFormula } from './bakers-formula.ts'

export const french: readonly BakersFormula[] = [
  {
    text: 'Farine T65 1 000 g\nEau 680 g\nSel 18 g\nLevure fraîche 5 g',
    is: 'F1000 W680 S18 Y5',
    yeast: 'fresh',
  },
  {
    text: '500 g de farine de blé\n325 ml d’eau tiède\n9 g de sel\n3 g de levure sèche',
    is: 'F500 W325 S9 Y3',
    yeast: 'instant',
  },
  {
    text: 'Farine T65 800 g\nFarine de seigle T130 200 g\nEau 680 g + 70 g\nSel 20 g',
    is: 'F1000 W750 S20',
  },
  { text: 'Farine 55 500 g\nEau 300 g', is: 'W0', asks: ['two-readings', 'weight-without-flour'] },
  {
    text: 'Farine 1 kg\nEau 65 cl\nSel 18 g\nLevure 10 g',
    is: 'F1000 W650 S18 Y10',
    doubts: ['yeast-form'],
  },
  {
    text: 'Poolish\nfarine 300 g\neau 300 g\nlevure fraîche 0,5 g\n\nPâte\nfarine 700 g\neau 380 g\nsel 18 g\nlevure fraîche 5 g',
    is: 'F1000 W680 S18 Y5.5',
    ahead: { Poolish: [30, 100] },
  },
  {
    text: 'Farine 900 g\nEau 580 g\nLevain liquide (hydratation 100 %) 200 g\nSel 18 g',
    is: 'F1000 W680 S18',
    ahead: { 'Levain liquide': [10, 100] },
  },
  {
    text: 'Farine 900 g\nEau 600 g\nLevain dur à 50 % d’hydratation 150 g\nSel 18 g',
    is: 'F1000 W650 S18',
    ahead: { 'Levain dur': [10, 50] },
  },
  {
    text: 'Farine 900 g\nEau 600 g\nLevain 200 g\nSel 18 g',
    is: 'F900 W600 S18',
    asks: ['hydration-unsaid'],
  },
  {
    text: 'Levain :\n40 g de farine de seigle\n40 g d’eau\n\nPâte finale :\n460 g de farine T80\n310 g d’eau\n9 g de sel\n80 g de levain',
    is: 'F500 W350 S9',
    ahead: { Levain: [8, 100] },
  },
  {
    text: 'Ingrédients (g)\nFarine 500\nEau 340\nSel 9\nLevure fraîche 4',
    is: 'F500 W340 S9 Y4',
    yeast: 'fresh',
  },
  {
    text: 'Ingrédient | Poids (g) | %\nFarine T55 | 1000 | 100\nLait | 550 | 55\nBeurre | 150 | 15\nSucre | 80 | 8\nSel | 18 | 1,8\nLevure fraîche | 30 | 3',
    is: 'F1000 L550 A150 O80 S18 Y30',
    yeast: 'fresh',
  },
  {
    text: 'Farine 100 %, eau 70 %, sel 1,8 %, levure fraîche 0,5 %',
    is: 'F1000 W700 S18 Y5',
    yeast: 'fresh',
  },
  { text: 'Farine 500 g\nEau 350 g\nSel 9 g\nTaux d’hydratation 70 %', is: 'F500 W350 S9' },
  {
    text: 'Farine 500 g\nEau 350 g\nSel 9 g\nHydratation : 65 %',
    is: 'F500 W350 S9',
    doubts: ['hydration'],
  },
  {
    text: 'Farine 500 g\nEau 350 g\nSel 9 g\nPoids total 859 g\nDiviser en 3 pâtons de 286 g',
    is: 'F500 W350 S9',
  },
  {
    text: 'Farine 500 g\nEau 350 g\nSel 9 g\nfarine pour le plan de travail 20 g',
    is: 'F500 W350 S9',
  },
  {
    text: 'Farine 500 g\n3 œufs\nBeurre 200 g\nSel 9 g\nSucre 60 g (12 % de la farine)',
    is: 'F500 A200 S9 O60',
    asks: ['pieces-not-weighed'],
  },
  {
    text: 'Farine 500 g\nŒufs 250 g\nBeurre 200 g\nSel 9 g\nDorure : 1 œuf',
    is: 'F500 L250 A200 S9',
  },
  {
    text: 'Farine 500 g\nEau 300 g\n1 sachet de levure sèche\nSel 9 g',
    is: 'F500 W300 S9',
    asks: ['cups-and-spoons'],
  },
  {
    text: 'Farine 500 g\nEau 300 g\n2 c. à soupe d’huile\nSel 9 g',
    is: 'F500 W300 S9',
    asks: ['cups-and-spoons'],
  },
  {
    text: 'Farine 500 g\nEau 300 g\nHuile d’olive 20 ml\nSel 9 g',
    is: 'F500 W300 S9',
    asks: ['volume-of-no-water'],
  },
  { text: 'Farine 2 kg\nEau 1,3 l\nSel 18 g par kg de farine', is: 'F2000 W1300 S36' },
  { text: 'Farine de seigle 300 g, farine T80 200 g, eau 400 g, sel 10 g', is: 'F500 W400 S10' },
  {
    text: 'Pain du quartier\nFarine d’épeautre 600 g\nEau 390 g\nSel 11 g\nPointage 2 h\nCuisson 40 min à 240 °C',
    is: 'F600 W390 S11',
  },
  { text: 'Farine 500 g\nEau de 300 à 350 g\nSel 9 g', is: 'F500 S9', asks: ['range'] },
  {
    text: 'Farine 500 g\nLait en poudre 20 g\nEau 310 g\nSel 9 g\nMalt 3 g',
    is: 'F500 W310 S9 O23',
  },
  {
    text: 'Farine 800 g\nPâte fermentée 200 g\nEau 520 g\nSel 16 g',
    is: 'F800 W520 S16',
    asks: ['build-unsaid'],
  },
  {
    text: '10 g de levure fraîche ou 3 g de levure sèche\n500 g de farine\n320 g d’eau',
    is: 'F500 W320',
    asks: ['one-or-the-other'],
  },
]
