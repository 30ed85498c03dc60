/** Laying out, joining and borders, in German: what the steps of a booklet say. */
import type { joinEnglish, Line, ReadingOrder, EndOfSeam, PressDirection } from './joinEnglish.ts'

const listed = (words: readonly (string | number)[]): string =>
  words.length < 2 ? String(words[0] ?? '') : `${words.slice(0, -1).join(', ')} und ${words.at(-1)}`
const seams = (number: number): string => (number === 1 ? 'die Naht' : number === 2 ? 'beide Nähte' : 'alle Nähte')
const clauses = (match: readonly string[]): string => (match.length === 0 ? '' : `: ${match.join('; ')}`)
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

const LINES: Readonly<Record<Line, readonly [one: string, many: string]>> = {
  row: ['Reihe', 'Reihen'],
  column: ['Spalte', 'Spalten'],
  section: ['Abschnitt', 'Abschnitte'],
}
const ORDERS: Readonly<Record<ReadingOrder, string>> = {
  across: 'von links nach rechts',
  down: 'von oben nach unten',
  'as shown': 'in der Reihenfolge, die das Bild zeigt',
}
const SIDES: Readonly<Record<EndOfSeam, string>> = { left: 'linken', right: 'rechten', upper: 'oberen', lower: 'unteren' }
const way = ([across, down]: PressDirection): string =>
  [...(down === 0 ? [] : [down < 0 ? 'nach oben' : 'nach unten']), ...(across === 0 ? [] : [across < 0 ? 'nach links' : 'nach rechts'])].join(' und ')

export const joinGerman: typeof joinEnglish = {
  nests: (number) => `lass die Nähte an ${number === 1 ? '1 Stelle' : `${number} Stellen`} ineinandergreifen`,
  opens: (number) => `steck ${number === 1 ? '1 Kreuzung' : `${number} Kreuzungen`} mit auseinandergebügelten Nähten`,
  pins: (number) => `steck ${number === 1 ? '1 Punkt' : `${number} Punkte`} mit Nadeln aufeinander`,
  tips: (number) => `näh eine Fadenbreite über ${number === 1 ? 'dem X, damit die Spitze bleibt' : `jedem X, damit ${number} Spitzen bleiben`}`,
  clashes: (number) => `steck ${number === 1 ? '1 Kreuzung' : `${number} Kreuzungen`}, wo die Nähte nicht ineinandergreifen, und näh dort langsam`,

  layOut: 'Leg alle Einheiten mit der rechten Seite nach oben aus, wie das Bild zeigt. Tritt zurück und schau: Liegt jede richtig herum?',
  oneAtATime: (blocks) => `Du machst ${blocks} Blöcke: Leg immer einen aus und näh ihn.`,
  keepLayout: 'Lass alles neben der Maschine liegen. Leg jedes Teil an seinen Platz zurück, wenn es genäht und gebügelt ist.',

  theBlock: 'der Block',
  thePiece: 'das Teil',
  lines: (line, places) => `${LINES[line][places.length > 1 ? 1 : 0]} ${listed(places)}`,
  lineMadeOf: (line, place, what) => `${LINES[line][0]} ${place} (${what})`,
  several: (number, name) => `${number} ${name}`,
  together: (names, order, match) => `Näh ${listed(names)} zusammen, ${ORDERS[order]}${clauses(match)}.`,
  oneToOther: (one, other, match) => `Näh ${one} an ${other}${clauses(match)}.`,
  twoAlike: (name, isUnit, match) => `Näh zwei gleiche ${isUnit ? 'Einheiten' : 'Teile'} (${name}) zusammen${clauses(match)}.`,
  makeAlike: (number) =>
    `Mach ${number}. Näh sie am laufenden Band: eins nach dem anderen durch die Maschine, danach die Fäden dazwischen abschneiden.`,
  matched: (match) => `${capital(match.join('; '))}.`,
  partial: ({ one, other, start, length }) =>
    `Näh ${one} nur ein Stück weit an ${other}: Beginn am ${SIDES[start]} Ende, halt nach ${length} am Punkt an und verriegle. Lass den Rest offen, du schließt ihn später. Bügle vorerst nur, so weit genäht ist.`,
  finishOpen: (number) =>
    `Schließ jetzt ${number === 1 ? 'die Naht, die du offen gelassen hast,' : `die ${number} Nähte, die du offen gelassen hast,`} vom Punkt bis zur Kante.`,

  pressSeams: (number, to) => `Bügle ${seams(number)} ${way(to)}.`,
  pressSeamToward: (to, name) => `Bügle die Naht ${way(to)}, zu ${name}.`,
  pressBentToward: (name) => `Bügle die Naht zu ${name}, wie die Pfeile zeigen.`,
  pressOpen: (number) => `Bügle ${seams(number)} auseinander.`,
  pressToward: (number, names) => `Bügle ${seams(number)} zu ${listed(names)}.`,
  pressExcept: (to, other, except, order) =>
    `Bügle alle Nähte ${to === 'open' ? 'auseinander' : way(to)}, außer ${listed(except)}, gezählt ${ORDERS[order]}: diese ${other === 'open' ? 'auseinander' : way(other)}.`,
  pressByNumber: (ways, order) =>
    `Bügle ${listed(ways.map(({ to, seams: numbers }) => `${numbers.length === 1 ? 'Naht' : 'Nähte'} ${listed(numbers)} ${to === 'open' ? 'auseinander' : way(to)}`))}, gezählt ${ORDERS[order]}.`,
  shouldMeasure: (name, size) => `${capital(name)} soll ${size} messen.`,
  eachShouldMeasure: (line, size) => `${line === 'row' || line === 'column' ? `Jede ${LINES[line][0]}` : 'Jedes Teil'} soll ${size} messen.`,

  setInEnd: (piece, into, seam) =>
    `Näh ${piece} an ${into}. Die Naht endet in einer Ecke: Mal dort auf die linke Seite beider Teile einen Punkt, ${seam} von beiden Kanten. Näh bis zum Punkt, keinen Stich weiter, und verriegle.`,
  setIn: ({ piece, into, corners, seam }) =>
    `Setz ${piece} in ${into} ein. Mal auf die linke Seite beider Teile einen Punkt an ${corners === 1 ? 'die Ecke' : `die ${corners} Ecken`}, wo die Naht abbiegt, ${seam} von beiden Kanten.`,
  clipCorner: (into, several) =>
    `Schneide die Nahtzugabe von ${into} an ${several ? 'jeder inneren Ecke' : 'der inneren Ecke'} ein, bis eine Fadenbreite vor den Punkt, nicht hindurch.`,
  seamEndsAtDot: (into) => `Die Naht von ${into}, die in die Ecke läuft, muss am Punkt enden: Trenn Stiche dahinter auf.`,
  pivot: (several) =>
    `Näh bis zu ${several ? 'jedem' : 'dem'} Punkt, keinen Stich weiter, und lass die Nadel im Stoff. Heb den Nähfuß, leg die nächsten Kanten aufeinander und näh weiter. Verriegle an beiden Enden.`,
  stopAtDot: (ends, seam) =>
    `Hier wird später eine Ecke eingesetzt: Halt ${ends === 1 ? 'am Ende mit dem Punkt' : 'an beiden Enden'} am Punkt an, ${seam} vor der Kante, und verriegle.`,

  measureThrough: ({ down, length, fabrics }) =>
    `Miss den Block durch die Mitte, ${down ? 'von oben nach unten' : 'von Seite zu Seite'}, nicht an der Kante.${length === null ? '' : ` Es sollten ${length} sein.`} Schneide beide Streifen aus ${listed(fabrics)} auf diese Länge.`,
  measureOtherWay:
    'Miss ihn auch von Seite zu Seite und schreib das auf. Danach schneidest du die Streifen für oben und unten, weil Quadrate in die Ecken kommen.',
  cutToMeasured: (length, fabrics) =>
    `Schneide beide Streifen aus ${listed(fabrics)} auf die Breite, die du vor dem Annähen der Seiten gemessen hast.${length === null ? '' : ` Das sollten ${length} sein.`}`,
  alongEach: (match) => `an jedem Streifen: ${match}`,
  cornerSquares: (fabrics, press) =>
    `Näh an beide Enden beider Streifen ein Eckquadrat aus ${listed(fabrics)}. Bügle ${press === null ? 'so, dass sie in die nächste Naht greift' : press === 'strips' ? 'zu den Streifen' : 'zu den Quadraten'}.`,
  pinStrips: (match) => `Steck jeden Streifen an beiden Enden und in der Mitte, verteil den Stoff dazwischen und näh${clauses(match)}.`,
  pressBorder: 'Bügle zum Rand.',
  pressAsArrows: 'Bügle, wie die Pfeile zeigen.',

  pictures: {
    laidOut: 'Der Block ausgelegt, jede Einheit mit ihrem Buchstaben.',
    laidApart: (name) => `${capital(name)} ausgelegt, rechte Seite oben, die Teile auseinander; Pfeile zeigen, wohin jede Naht gebügelt wird.`,
    behind: (name) => `${capital(name)} von der linken Seite, genäht und gebügelt.`,
    where: (name) => `Wo ${name} im Block liegt.`,
    rows: (line) => `Der Block ausgelegt, die ${LINES[line][1]} auseinander und nummeriert; Pfeile zeigen, wohin jede Naht gebügelt wird.`,
    border: (sides) => `${sides ? 'Die Seitenstreifen' : 'Die Streifen für oben und unten'} neben dem Block; Pfeile zeigen, wohin gebügelt wird.`,
    looks: (labels) => `${listed(labels)} von der rechten Seite.`,
    pressedUnit: (label) => `Einheit ${label} von der linken Seite, mit gebügelten Nähten.`,
    unitApart: (label) => `Die Teile von Einheit ${label}, auseinandergelegt; Zahlen zeigen, welche Naht zuerst kommt.`,
    finished: (name) => `${name}, fertig.`,
  },
}
