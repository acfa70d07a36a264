import type { BakersFormula } from './bakers-formula.ts'

export const italian: readonly BakersFormula[] = [
  {
    text: 'Farina 00 500 g\nAcqua 325 g\nSale 12 g\nLievito di birra fresco 2 g',
    is: 'F500 W325 S12 Y2',
    yeast: 'fresh',
  },
  {
    text: '1 kg di farina tipo 0\n650 ml di acqua\n25 g di sale\n1 g di lievito di birra secco',
    is: 'F1000 W650 S25 Y1',
    yeast: 'instant',
  },
  {
    text: 'Farina 0 1.000 g\nAcqua 600 g',
    is: 'W0',
    asks: ['two-readings', 'weight-without-flour'],
  },
  {
    text: 'Semola rimacinata 400 g\nFarina 0 100 g\nAcqua 350 g\nSale 10 g\nOlio 20 g',
    is: 'F500 W350 S10 A20',
  },
  {
    text: 'Biga\nfarina 800 g\nacqua 360 g\nlievito di birra fresco 8 g\n\nImpasto\nfarina 200 g\nacqua 340 g\nsale 22 g\ntutta la biga',
    is: 'F1000 W700 S22 Y8',
    ahead: { Biga: [80, 45] },
  },
  {
    text: 'Poolish: 200 g farina, 200 g acqua, 0,2 g lievito di birra fresco\nImpasto: 300 g farina, 125 g acqua, 12 g sale',
    is: 'F500 W325 S12 Y0.2',
    ahead: { Poolish: [40, 100] },
  },
  {
    text: 'Farina 450 g\nAcqua 300 g\nLievito madre (50 % idratazione) 150 g\nSale 11 g',
    is: 'F550 W350 S11',
    ahead: { 'Lievito madre': [100 / 5.5, 50] },
  },
  {
    text: 'Farina 450 g\nAcqua 300 g\nLievito madre 150 g\nSale 11 g',
    is: 'F450 W300 S11',
    asks: ['hydration-unsaid'],
  },
  {
    text: 'Farina 450 g\nAcqua 250 g\nLicoli (idratazione 100 %) 100 g\nSale 10 g',
    is: 'F500 W300 S10',
    ahead: { Licoli: [10, 100] },
  },
  { text: 'Farina 500 g\nAcqua 350 g\nSale 10 g\nIdratazione 70 %', is: 'F500 W350 S10' },
  {
    text: 'Farina 500 g\nAcqua 350 g\nSale 10 g\nIdratazione 65 %',
    is: 'F500 W350 S10',
    doubts: ['hydration'],
  },
  { text: 'Farina 500 g\nAcqua 325 g\nSale 12 g\nResa: 3 panetti da 279 g', is: 'F500 W325 S12' },
  { text: 'Farina 500 g\nAcqua 325 g\nSale 12 g\nTotale 837 g', is: 'F500 W325 S12' },
  {
    text: 'Farina 500 g\nAcqua 325 g\nSale 12 g\nTotale 900 g',
    is: 'F500 W325 S12',
    doubts: ['total'],
  },
  {
    text: 'Farina 500 g\nAcqua 325 g\nSale 12 g\nsemola per lo spolvero 30 g',
    is: 'F500 W325 S12',
  },
  { text: 'Farina 500 g\nAcqua 325 g\nSale q.b.', is: 'F500 W325', asks: ['no-amount'] },
  {
    text: 'Farina 500 g\nAcqua 3 dl\n2 cucchiai di olio\nSale 10 g',
    is: 'F500 W300 S10',
    asks: ['cups-and-spoons'],
  },
  {
    text: 'Farina 100 %\nAcqua 62 %\nSale 2,5 %\nLievito di birra fresco 0,2 %',
    is: 'F1000 W620 S25 Y2',
    yeast: 'fresh',
  },
  {
    text: 'Ingrediente | g | %\nFarina | 600 | 100\nAcqua | 420 | 70\nSale | 15 | 2,5\nOlio | 24 | 4',
    is: 'F600 W420 S15 A24',
  },
  {
    text: 'Ingredienti in g\nFarina 500\nAcqua 340\nSale 10\nLievito secco 2',
    is: 'F500 W340 S10 Y2',
    yeast: 'instant',
  },
  {
    text: 'Farina manitoba 300 g\nFarina integrale 200 g\nAcqua 360 g\nMalto 5 g\nSale 10 g',
    is: 'F500 W360 O5 S10',
  },
  {
    text: 'Farina 500 g\n2 uova\nLatte 150 ml\nBurro 80 g\nZucchero 70 g',
    is: 'F500 L150 A80 O70',
    asks: ['pieces-not-weighed'],
  },
  {
    text: 'Farina 500 g\nUova 100 g\nLatte 150 ml\nStrutto 80 g\nSale 8 g',
    is: 'F500 L250 A80 S8',
  },
  { text: '3 etti di farina\n2 dl di acqua\n6 g di sale', is: 'F300 W200 S6' },
  {
    text: '1 cubetto di lievito di birra\n500 g di farina\n300 g di acqua',
    is: 'F500 W300',
    asks: ['cups-and-spoons'],
  },
  { text: 'Farina 500 g, acqua 350 g, sale 10 g e olio 15 g', is: 'F500 W350 S10 A15' },
  {
    text: 'Pane del circolo\n\n700 g di farina di segale\n500 g di acqua\n14 g di sale\n\nCuocere 50 minuti a 220 °C',
    is: 'F700 W500 S14',
  },
  { text: 'Farina 2 kg\nAcqua 1,3 l\nSale 25 g per kg di farina', is: 'F2000 W1300 S50' },
  { text: 'Farina 500 g\nAcqua 250 ml circa\nSale 10 g\nNoci 80 g', is: 'F500 W250 S10 O80' },
  { text: 'Farina 500 g\nAcqua 300 - 330 g\nSale 10 g', is: 'F500 S10', asks: ['range'] },
  {
    text: 'Lievitino\n100 g farina\n60 g acqua\n10 g lievito di birra fresco\n\nSecondo impasto\n400 g farina\n200 g latte\n50 g burro\n8 g sale',
    is: 'F500 W60 L200 A50 S8 Y10',
    ahead: { Lievitino: [20, 60] },
  },
]
