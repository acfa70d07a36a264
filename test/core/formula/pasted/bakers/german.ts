import type { BakersFormula } from './bakers-formula.ts'

export const german: readonly BakersFormula[] = [
  {
    text: 'Weizenmehl 550 500 g\nWasser 350 g\nSalz 10 g\nFrischhefe 5 g',
    is: 'F500 W350 S10 Y5',
    yeast: 'fresh',
  },
  {
    text: '500 g Weizenmehl Type 550\n325 ml lauwarmes Wasser\n10 g Salz\n7 g Trockenhefe',
    is: 'F500 W325 S10 Y7',
    yeast: 'instant',
  },
  {
    text: 'Roggenmehl 1150 300 g\nWeizenmehl 1050 200 g\nWasser 380 g\nSalz 10 g\nHefe 5 g',
    is: 'F500 W380 S10 Y5',
    doubts: ['yeast-form'],
  },
  {
    text: '1’250 g Ruchmehl\n8 dl Wasser\n25 g Salz\n20 g frische Hefe',
    is: 'F1250 W800 S25 Y20',
    yeast: 'fresh',
  },
  {
    text: "1'000 g Zopfmehl\n5,5 dl Milch\n120 g Butter\n20 g Salz\n20 g Zucker\n30 g frische Hefe\n1 Ei zum Bestreichen",
    is: 'F1000 L550 A120 S20 O20 Y30',
    yeast: 'fresh',
  },
  {
    text: 'Zutat;Gramm;Prozent\nWeizenmehl;1.000,0;100\nWasser;650,0;65\nSalz;20,0;2',
    is: 'F1000 W650 S20',
  },
  {
    text: 'Zutaten in Gramm:\nDinkelmehl 600\nWasser 390\nSalz 12\nHonig 15',
    is: 'F600 W390 S12 O15',
  },
  {
    text: 'Sauerteig:\n150 g Roggenmehl\n120 g Wasser\n15 g Anstellgut (100 % Hydration)\n\nHauptteig:\n350 g Weizenmehl\n220 g Wasser\n10 g Salz\n285 g Sauerteig',
    is: 'F507.5 W347.5 S10',
    ahead: { Sauerteig: [15750 / 507.5, (127.5 / 157.5) * 100] },
  },
  {
    text: 'Vorteig\n200 g Mehl\n200 g Wasser\n1 g frische Hefe\n\nHauptteig\n800 g Mehl\n450 g Wasser\n20 g Salz\n10 g frische Hefe\nVorteig',
    is: 'F1000 W650 S20 Y11',
    ahead: { Vorteig: [20, 100] },
  },
  {
    text: 'Roggensauer TA 180 180 g\nWeizenmehl 400 g\nWasser 270 g\nSalz 10 g',
    is: 'F500 W350 S10',
    ahead: { Roggensauer: [20, 80] },
  },
  {
    text: 'Sauerteig 200 g\nMehl 400 g\nWasser 250 g\nSalz 10 g',
    is: 'F400 W250 S10',
    asks: ['hydration-unsaid'],
  },
  { text: 'Mehl 1 kg\nWasser 0,65 l\nSalz 20 g pro kg Mehl\nTA 165', is: 'F1000 W650 S20' },
  {
    text: 'Mehl 1 kg\nWasser 650 g\nSalz 20 g\nTA 170',
    is: 'F1000 W650 S20',
    doubts: ['hydration'],
  },
  { text: 'Teiggewicht 860 g\nMehl 500 g\nWasser 350 g\nSalz 10 g', is: 'F500 W350 S10' },
  {
    text: 'Mehl 500 g\nWasser 350 g\nSalz 10 g\nGesamt 860 g\nErgibt 10 Brötchen zu 86 g',
    is: 'F500 W350 S10',
  },
  {
    text: 'Mehl 500 g\nWasser 350 g\nSalz 10 g\nMehl zum Bestäuben 20 g\nÖl für die Form',
    is: 'F500 W350 S10',
  },
  {
    text: '500 g Mehl\n300 g Wasser\n1 Würfel Hefe\n10 g Salz',
    is: 'F500 W300 S10',
    asks: ['cups-and-spoons'],
  },
  {
    text: '500 g Mehl\n300 g Wasser\n1 Würfel Hefe (42 g)\n10 g Salz',
    is: 'F500 W300 S10 Y42',
    yeast: 'fresh',
    doubts: [],
  },
  {
    text: '500 g Mehl\n2 EL Öl\n300 ml Wasser\n1 TL Salz',
    is: 'F500 W300',
    asks: ['cups-and-spoons', 'cups-and-spoons'],
  },
  { text: '500 g Mehl\n2 EL Öl (20 g)\n300 ml Wasser\n10 g Salz', is: 'F500 W300 A20 S10' },
  {
    text: '3 Eier\n500 g Mehl\n100 ml Milch\n80 g Butter',
    is: 'F500 L100 A80',
    asks: ['pieces-not-weighed'],
  },
  {
    text: 'Mehl 100 %\nWasser 68 %\nSalz 2,2 %\nHefe frisch 1 %',
    is: 'F1000 W680 S22 Y10',
    yeast: 'fresh',
  },
  { text: 'Roggenmehl 60 %, Weizenmehl 40 %, Wasser 75 %, Salz 2 %', is: 'F1000 W750 S20' },
  {
    text: 'Brühstück\n100 g Leinsamen\n200 g Wasser\n\nTeig\n600 g Weizenmehl\n300 g Wasser\n14 g Salz',
    is: 'F600 W500 S14 O100',
  },
  {
    text: 'Versuch der Backgruppe\n\n500 g Mehl, 340 g Wasser, 10 g Salz und 3 g Trockenhefe\n\nZubereitung\nAlles mischen und 10 min kneten.\nBei 230 °C 25 Minuten backen.',
    is: 'F500 W340 S10 Y3',
  },
  {
    text: 'Mehl 450 g\nMilchpulver 20 g\nWasser 280 g\nBackmalz 5 g\nSalz 9 g',
    is: 'F450 W280 O25 S9',
  },
  { text: 'Mehl ca. 500 g\nWasser etwa 330 g\nSalz 10 g', is: 'F500 W330 S10' },
  {
    text: 'Weizenmehl 812 400 g\nRoggenmehl 997 100 g\nWasser 360 g (72 %)\nSalz 10 g (2 %)',
    is: 'F500 W360 S10',
  },
  {
    text: 'Weizenmehl 400 g\nWasser 280 g (75 %)\nSalz 8 g',
    is: 'F400 W280 S8',
    doubts: ['percent'],
  },
  { text: 'Mehl 500 g\nWasser 300 bis 350 g\nSalz 10 g', is: 'F500 S10', asks: ['range'] },
  { text: 'Mehl 500 g\nWasser 320 g\nSalz nach Geschmack', is: 'F500 W320', asks: ['no-amount'] },
  {
    text: 'Poolish: 150 g Mehl, 150 g Wasser, 0,5 g frische Hefe\nHauptteig: 350 g Mehl, 180 g Wasser, 10 g Salz',
    is: 'F500 W330 S10 Y0.5',
    ahead: { Poolish: [30, 100] },
  },
  {
    text: 'Für 2 Brote\nHalbweissmehl 900 g\nWasser 6 dl\nSalz 18 g\nHefe 15 g frisch',
    is: 'F900 W600 S18 Y15',
    yeast: 'fresh',
  },
  {
    text: '1 kg Mehl davon 200 g Roggenmehl\n650 g Wasser',
    is: 'W0',
    asks: ['several-amounts', 'weight-without-flour'],
  },
  {
    text: 'Roggenvollkornsauerteig (TA 180) 360 g\nWeizenmehl 800 g\nWasser 540 g\nSalz 20 g',
    is: 'F1000 W700 S20',
    ahead: { Roggenvollkornsauerteig: [20, 80] },
  },
]
