/** Making units, in German: what the steps of a booklet say. */
import type { unitsEnglish } from './unitsEnglish.ts'

const units = (number: number): string => (number === 1 ? '1 Einheit' : `${number} Einheiten`)
const over = (spare: number): string => (spare === 0 ? '' : ` ${spare} ${spare === 1 ? 'bleibt' : 'bleiben'} übrig.`)
const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`

const goose = ({ count, label, left, right }: Parameters<(typeof unitsEnglish)['setMakes']>[0][number]): string => {
  if (label !== null) return `${count} ${label}`
  const one = count === 1 ? '1 Gans' : `${count} Gänse`
  return `${one} mit ${left === right ? `beiden Flügeln aus ${left}` : `${left} links und ${right} rechts`}`
}

const CORNERS = { topLeft: 'oben links', topRight: 'oben rechts', bottomRight: 'unten rechts', bottomLeft: 'unten links' } as const
const PATCHES: Readonly<Record<string, string>> = {
  ...CORNERS,
  top: 'oben',
  right: 'rechts',
  bottom: 'unten',
  left: 'links',
  upper: 'oben',
  lower: 'unten',
  centre: 'in der Mitte',
}
const HANDS = { right: 'Rechtshändig', left: 'Linkshändig' } as const
const EDGES = { right: 'rechten', left: 'linken' } as const
const onPair = (fabric: string | null, pairs: number): string =>
  fabric === null
    ? pairs === 1
      ? 'eines Quadrats'
      : 'eines Quadrats von jedem Paar'
    : pairs === 1
      ? `des Quadrats aus ${fabric}`
      : `der Quadrate aus ${fabric}`

export const unitsGerman: typeof unitsEnglish = {
  geeseSets: ({ sets, geese, spare }) =>
    `${sets === 1 ? '1 Viererset ergibt' : `${sets} Vierersets ergeben`} ${geese === 1 ? 'deine Gans' : `alle ${geese} Gänse`}.${over(spare)}`,
  takeSet: ({ set, goose: fabric, squares: all }) => {
    const small =
      all.length === 1
        ? `4 kleine Quadrate aus ${all[0]?.fabric}`
        : `4 kleine Quadrate: ${all.map((one) => `${listed(one.numbers)} aus ${one.fabric}`).join(', ')}`
    return `${set === null ? 'Nimm' : `Set ${set}: Nimm`} 1 großes Quadrat aus ${fabric} und ${small}. Nummerier sie im Uhrzeigersinn, von der Ecke oben links an.`
  },
  setMakes: (geese) => `Das ergibt ${listed(geese.map(goose))}.`,
  spareGeese: (geese) => `Übrig: ${listed(geese.map(goose))}.`,
  drawOnSmallSquares: 'Zeichne auf die linke Seite jedes kleinen Quadrats eine Linie von Ecke zu Ecke.',
  layTwoSquares:
    'Leg die Quadrate 1 und 3 rechts auf rechts auf zwei gegenüberliegende Ecken des großen Quadrats. Sie überlappen, und ihre Linien bilden eine lange Linie.',
  sewBesideLine: (seam) => `Näh auf beiden Seiten der Linie, ${seam} neben ihr.`,
  cutOnLine: 'Schneide auf der Linie.',
  pressHearts: 'Bügle die kleinen Dreiecke vom großen weg. Jede Hälfte sieht aus wie ein Herz.',
  laySquareOnHalf:
    'Leg Quadrat 2 rechts auf rechts auf die große Ecke der einen Hälfte, seine Linie zwischen den beiden kleinen Dreiecken. Mach es mit Quadrat 4 auf der anderen Hälfte genauso.',
  pressGeese: 'Bügle beide Nähte zu den Flügeln. Jede Hälfte ergibt 2 Gänse.',
  madeBySet: (set) => (set === null ? 'Das sind die 4 Gänse.' : `Set ${set} ergibt diese 4 Gänse.`),

  pairSquares: ({ pairs, one, other, makes, spare }) => {
    const put =
      one === other
        ? pairs === 1
          ? `Leg 2 Quadrate aus ${one} rechts auf rechts.`
          : `Leg die Quadrate aus ${one} zu ${pairs} Paaren rechts auf rechts.`
        : `${pairs === 1 ? 'Leg' : `Mach ${pairs} Paare: Leg je`} ein Quadrat aus ${one} und ein Quadrat aus ${other} rechts auf rechts.`
    return `${put} ${pairs === 1 ? 'Sie ergeben' : 'Alle Paare ergeben'} ${units(makes)}.${over(spare)}`
  },
  drawOneLine: (fabric, pairs) => `Zeichne auf die linke Seite ${onPair(fabric, pairs)} eine Linie von Ecke zu Ecke.`,
  drawTwoLines: (fabric, pairs) => `Zeichne auf die linke Seite ${onPair(fabric, pairs)} beide Linien von Ecke zu Ecke.`,
  sewBesideLines: (seam) => `Näh auf beiden Seiten jeder Linie, ${seam} neben ihr.`,
  sewAllRound: (seam) => `Näh ringsum, ${seam} von der Kante.`,
  cutBothWays: 'Schneide das Paar, ohne es zu verschieben, in beiden Richtungen von Ecke zu Ecke durch.',
  cutMiddleAndLines: 'Schneide in beiden Richtungen durch die Mitte, dann auf den Linien.',
  eachPairMakes: (number) => `Jedes Paar ergibt ${number}.`,
  pressHalves: (fabric) => `Bügle die Naht beider Hälften zu ${fabric ?? 'demselben Stoff'}.`,
  crossHalves:
    'Leg die beiden Hälften rechts auf rechts, jeden Stoff auf den anderen, sodass die Nähte ineinandergreifen. Zeichne die andere Linie von Ecke zu Ecke, quer über die Naht.',
  twoHands: (spare) => `Das ergibt 2 Sanduhren: Die eine ist die gespiegelte andere.${spare ? ' Behalte die, die beim Auslegen zu sehen ist.' : ''}`,

  useAsCut: 'Nimm es, wie es geschnitten ist.',
  drawOnCorners: (fabrics) => `Zeichne auf die linke Seite jedes kleinen Quadrats (${listed(fabrics)}) eine Linie von Ecke zu Ecke.`,
  laySquaresOnCorners: ({ each, base, corners }) =>
    `Leg ${each ? 'für jede Einheit ' : ''}${corners.length === 1 ? 'ein Quadrat' : 'Quadrate'} rechts auf rechts auf ${listed(corners)} des Teils aus ${base}. Näh auf ${corners.length === 1 ? 'der Linie' : 'den Linien'}.`,
  corner: (corner, fabric) => `die Ecke ${CORNERS[corner]}${fabric === null ? '' : ` in ${fabric}`}`,
  trimCorners: (seam, number) => `Schneide ${seam} neben der Naht ab. Klapp die ${number === 1 ? 'Ecke' : 'Ecken'} um und bügle.`,
  sameOnCorners: (corners) => `Mach es auf ${listed(corners)} genauso: Näh auf ${corners.length === 1 ? 'der Linie' : 'den Linien'}.`,

  makeStripSets: (sets, fabrics) =>
    `Mach ${sets === 1 ? '1 Streifensatz' : `${sets} Streifensätze`}: Näh die langen Streifen in dieser Reihenfolge aneinander: ${listed(fabrics)}. Beginn jede Naht am anderen Ende als die vorige, damit der Satz gerade bleibt.`,
  cutAcrossSets: ({ pieces, sets, size }) =>
    `Begradige ein Ende. Schneide quer durch ${sets === 1 ? 'den Satz' : 'die Sätze'} ${pieces === 1 ? '1 Stück' : `${pieces} Stücke`}, ${pieces === 1 ? '' : 'je '}${size}.`,

  sewHst: 'Näh die Dreiecke paarweise an den langen Kanten zusammen, rechts auf rechts. Dehn die Schrägkanten nicht. Schneide die Öhrchen ab.',
  sewHourglass:
    'Näh die Dreiecke paarweise an einer kurzen Kante zusammen: oben an rechts, unten an links. Näh dann die beiden Hälften an den langen Kanten zusammen. Schneide die Öhrchen ab.',
  sewGoose:
    'Näh einen Flügel rechts auf rechts an das mittlere Dreieck, seine lange Kante an eine kurze. Bügle, dann näh den anderen Flügel an. Schneide die Öhrchen ab.',
  sewDiamond:
    'Näh Dreiecke an zwei gegenüberliegende Seiten des Quadrats, sodass ihre Spitzen an beiden Enden gleich weit überstehen. Bügle, schneide die Öhrchen ab, dann näh die anderen beiden an.',
  sewCornered:
    'Näh an jede gekappte Ecke der Mitte ein Dreieck, sodass seine Spitzen an beiden Enden gleich weit überstehen. Schneide die Öhrchen ab.',
  sewStrips: (fabrics) =>
    `Näh die Streifen in dieser Reihenfolge aneinander: ${listed(fabrics)}. Beginn jede Naht am anderen Ende als die vorige, damit die Einheit gerade bleibt.`,
  halfRectanglePairs: ({ one, other, hand }) =>
    `Jede Einheit braucht 1 Dreieck aus ${one} und 1 aus ${other}${hand === null ? '' : `, beide ${hand === 'left' ? 'linkshändig' : 'rechtshändig'} geschnitten`}.`,
  markDots: (seam) =>
    `Mal auf die linke Seite jedes Dreiecks an beide Enden der langen Kante einen Punkt, ${seam} von beiden Kanten, die sich dort treffen.`,
  matchDots:
    'Leg die beiden an den langen Kanten rechts auf rechts. Steck durch die Punkte, sodass sie aufeinanderliegen, und näh von Kante zu Kante durch beide Punkte. Die Spitzen stehen an den Enden über.',

  pressAll: (seams, way) => `Bügle ${seams === 1 ? 'die Naht' : seams === 2 ? 'beide Nähte' : 'alle Nähte'} ${way}.`,
  pressShortAndLong: (way) => `Bügle die beiden kurzen Nähte ${way} und die lange Naht, wie der Pfeil zeigt.`,
  pressShortLongOpen: 'Bügle die beiden kurzen Nähte, wie die Pfeile zeigen, und die lange Naht auseinander.',
  pressAsArrows: 'Bügle jede Naht, wie die Pfeile zeigen.',
  labelled: (label, count, said) => `${label} (${units(count)}): ${said}`,
  open: 'auseinander',
  toward: (what) => `zu ${what}`,
  theGoose: 'der Gans',
  theWings: 'den Flügeln',
  theCentre: 'der Mitte',
  theCorners: 'den Ecken',
  patchSide: (patch) => `der Seite ${PATCHES[patch] ?? patch}`,
  theseLooks: 'Zusammen gemacht, sehen sie so aus.',
  bias: 'Die Außenkanten liegen schräg zum Fadenlauf und dehnen sich leicht. Fass sie vorsichtig an und bügle ohne zu schieben.',
  shouldMeasure: (count, size) => `${count === 1 ? 'Sie' : 'Jede'} soll ${size} messen.`,

  trimTo: (count, size) => `Schneide ${count === 1 ? 'sie' : 'jede'} auf ${size} zu.`,
  firstCut: ({ hand, under }) => `${HANDS[hand]}, erster Schnitt: Leg ${under}. Schneide an der ${EDGES[hand]} und der oberen Kante.`,
  firstCutAlike: 'Linkshändig, erster Schnitt: genauso, von der linken Kante gemessen. Schneide an der linken und der oberen Kante.',
  secondCut: ({ hand, lines, under }) =>
    `${HANDS[hand]}, zweiter Schnitt: Dreh sie um 180° und leg die geschnittenen Kanten auf ${lines}${under === null ? '' : `, ${under}`}. Schneide die anderen beiden Kanten.`,
  rulerLines: (wide, high) => (wide === high ? `die ${wide}-Linien des Lineals` : `die Linien für ${wide} und ${high}`),
  halfSquareLine: (one) => `die 45°-Linie des Lineals auf ${one ? 'die Naht' : 'eine Naht'}`,
  seamsMeet: (side, top, hand) => `den Punkt, wo die Nähte sich treffen, ${side} von der ${EDGES[hand]} und ${top} unter der oberen Kante`,
  seamEnds: (side, top, hand) => `das Ende der Naht ${side} von der ${EDGES[hand]} und ${top} unter der oberen Kante`,

  pictures: {
    twoOnLarge:
      'Das große Quadrat, rechte Seite oben, mit den kleinen Quadraten 1 und 3 auf gegenüberliegenden Ecken, linke Seite oben, eine Linie über beide.',
    sewn: 'Dasselbe, mit Nähten auf beiden Seiten der Linie.',
    cutApart: 'Dasselbe, auf der Linie durchgeschnitten: zwei Hälften.',
    hearts: 'Beide Hälften, gebügelt: Jede sieht aus wie ein Herz.',
    thirdSquare: 'Die kleinen Quadrate 2 und 4 auf den großen Ecken der beiden Hälften, jedes mit seiner Linie.',
    thirdSewn: 'Nähte auf beiden Seiten der Linien der Quadrate 2 und 4.',
    thirdCut: 'Die Hälften auf diesen Linien durchgeschnitten: vier Stücke.',
    fourGeese: 'Vier Gänse, gebügelt, rechte Seite oben, jede mit ihrem Buchstaben.',
    pair: 'Zwei Quadrate, rechts auf rechts, mit der Linie.',
    pairSewn: 'Nähte auf beiden Seiten der Linie.',
    pairLines: 'Zwei Quadrate, rechts auf rechts, mit beiden Linien.',
    pairRound: 'Zwei Quadrate, rechts auf rechts, ringsum genäht.',
    pairCut: 'Das Paar auseinandergeschnitten.',
    crossed: 'Zwei Hälften, rechts auf rechts, die Stoffe gekreuzt, mit der neuen Linie.',
    crossedSewn: 'Nähte auf beiden Seiten der neuen Linie.',
    hands: 'Zwei Sanduhren, rechte Seite oben: Die eine ist die gespiegelte andere.',
    laid: 'Das große Teil mit kleinen Quadraten auf den Ecken, Nähte auf ihren Linien.',
    flipped: 'Die Ecken abgeschnitten und umgeklappt.',
    set: 'Der Streifensatz, genäht.',
    setCut: 'Der Streifensatz und die Schnitte quer durch ihn.',
  },
}
