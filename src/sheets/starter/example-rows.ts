// Starter: a small invented army that plans without a problem. In: nothing. Out: its rows, sheet by sheet, as text.
import type { SheetName } from '../../model/words.js';

/** One row: cells by header; columns that are left out stay blank. */
export type ExampleRow = ReadonlyMap<string, string>;

/**
 * The log stays without rows, as it begins when the painting does, and so do the swaps. Codes are of the range that shops use inside their own
 * walls (GS1 prefixes 200 to 299), so they name no product.
 */
export const exampleRows: Readonly<Record<SheetName, readonly ExampleRow[]>> = {
  pots: rowsOf(`
    paint        | size ml | left   | empty g | price | container | ordered | code          | place
    Chalk primer | 400     | 10%    |         | 9.50  | can       |         | 2000310000019 | shelf
    Pale varnish | 400     | full   |         | 9.90  | can       |         | 2000310000026 | shelf
    Oat          | 17      | 15%    |         | 2.80  | dropper   |         | 2000310000033 | rack 1
    Slate        | 17      | 40%    |         | 2.80  | dropper   |         | 2000310000040 | rack 1
    Bone         | 17      | 1 ml   |         | 2.80  | dropper   |         | 2000310000057 | rack 1
    Peat         | 17      | 24.5 g | 12      | 2.80  | dropper   |         | 2000310000064 | rack 1
    Peat         | 17      |        |         | 2.80  | dropper   | yes     | 2000310000064 |
    Steel        | 17      | 50%    |         | 3.10  | dropper   |         | 2000310000071 | rack 2
    Soot wash    | 24      | 40%    |         | 4.60  | pot       |         | 2000310000088 | rack 2
    Brook gravel | 100     | 70 ml  |         | 6.40  | tube      |         | 2000310000095 | drawer`),
  paints: rowsOf(`
    paint        | kind     | hex     | opacity | density g/ml | thin | keep ml | also called
    Chalk primer | primer   | #b9b7ae | strong  |              |      | 80      |
    Pale varnish | varnish  |         |         |              |      |         |
    Oat          | colour   | #d8c08a | fair    |              |      |         |
    Slate        | colour   | #5a6570 | strong  |              | 0.2  |         | blue grey
    Bone         | colour   | #e6dfc8 | weak    |              |      | 3       |
    Peat         | colour   | #4a3728 | strong  | 1.2          |      |         |
    Rust         | colour   | #9c4a2f | fair    |              |      |         |
    Steel        | metallic | #8a9096 | strong  | 1.3          |      |         |
    Soot wash    | wash     | #2b2622 |         |              |      |         |
    Brook gravel | texture  | #b59f78 | strong  |              |      |         |`),
  offers: rowsOf(`
    shop       | offer            | price | paint        | size ml | pots | available | container | code
    north shop | Oat 17 ml        | 2.80  | Oat          | 17      |      |           | dropper   | 2000310000033
    north shop | Slate 17 ml      | 2.80  | Slate        | 17      |      |           | dropper   | 2000310000040
    north shop | Rust 17 ml       | 2.80  | Rust         | 17      |      |           | dropper   | 2000310000101
    north shop | Bone 17 ml       | 2.80  | Bone         | 17      |      |           | dropper   | 2000310000057
    north shop | Steel 17 ml      | 3.10  | Steel        | 17      |      | 4         | dropper   | 2000310000071
    north shop | Soot wash 24 ml  | 4.60  | Soot wash    | 24      |      |           | pot       | 2000310000088
    south shop | earth set        | 6.90  | Peat         | 17      | 1    |           | dropper   |
    south shop | earth set        |       | Rust         | 17      | 1    |           | dropper   |
    south shop | earth set        |       | Oat          | 17      | 1    |           | dropper   |
    south shop | primer 400 ml    | 9.20  | Chalk primer | 400     |      |           | can       | 2000310000019
    south shop | pale 400 ml      | 9.90  | Pale varnish | 400     |      |           | can       | 2000310000026
    south shop | gravel 100 ml    | 6.40  | Brook gravel | 100     |      |           | tube      | 2000310000095`),
  shops: rowsOf(`
    shop       | postage | free from | least order
    north shop | 3.90    | 30        |
    south shop | 4.50    |           | 10`),
  figures: rowsOf(`
    figure     | eye mm | build  | dress   | kit                  | base     | base high mm | box mm   | price
    hill scout | 28     |        | clothed | weapon, round shield | round 25 |              |          | 1.50
    hill rider | 28     | heroic | clothed | weapon, horse        | 25x50    | 4            |          | 4.20
    ox cart    |        |        |         |                      |          |              | 60x30x25 | 8`),
  zones: rowsOf(`
    zone | parts                                                          | figure
    coat | front trunk, back trunk, buttocks, groin, upper arms, forearms |`),
  schemes: rowsOf(`
    scheme | step | zone         | layer          | paint        | coats | method | area % | thin | share
    scouts | 1    | all          | primer         | Chalk primer |       |        |        |      |
    scouts | 2    | coat         | base coat      | Oat          |       |        |        |      |
    scouts | 3    | trousers     | base coat      | Slate        |       |        |        |      |
    scouts | 4    | boots        | base coat      | Peat         |       |        |        |      |
    scouts | 4    | base edge    | base coat      | Peat         | 1     |        |        |      |
    scouts | 5    | skin         | base coat      | Bone         |       |        |        |      |
    scouts | 6    | weapon       | base coat      | Steel        | 1     |        |        |      |
    scouts | 6    | round shield | base coat      | Rust         |       |        |        |      |
    scouts | 7    | whole        | wash           | Soot wash    |       |        |        |      |
    scouts | 8    | coat         | highlight      | Oat          |       |        |        |      | 2
    scouts | 8    | coat         | highlight      | Bone         |       |        |        |      | 1
    scouts | 9    | base top     | basing         | Brook gravel |       |        |        |      |
    scouts | 10   | all          | varnish        | Pale varnish |       |        |        |      |
    riders | 1    | all          | primer         | Chalk primer |       |        |        |      |
    riders | 2    | horse        | base coat      | Peat         |       |        |        |      |
    riders | 3    | coat         | base coat      | Rust         |       |        |        |      |
    riders | 3    | legs         | base coat      | Slate        |       |        |        |      |
    riders | 3    | feet         | base coat      | Peat         |       |        |        |      |
    riders | 4    | skin         | base coat      | Bone         |       |        |        |      |
    riders | 5    | weapon       | base coat      | Steel        | 1     |        |        |      |
    riders | 6    | whole        | wash           | Soot wash    |       |        |        |      |
    riders | 7    | horse        | drybrush       | Oat          |       |        | 20     |      |
    riders | 7    | coat         | edge highlight | Bone         |       |        |        | 0.5  |
    riders | 8    | base         | basing         | Brook gravel |       |        |        |      |
    riders | 9    | all          | varnish        | Pale varnish |       |        |        |      |
    cart   | 1    | whole        | primer         | Chalk primer |       |        |        |      |
    cart   | 2    | whole        | base coat      | Peat         | 1     |        |        |      |
    cart   | 3    | whole        | wash           | Soot wash    |       |        | 50     |      |
    cart   | 4    | whole        | drybrush       | Bone         |       |        |        |      |`),
  swaps: [],
  army: rowsOf(`
    unit          | figure     | scheme | count | batch | done | priority
    first scouts  | hill scout | scouts | 10    |       | 2    | 1
    second scouts | hill scout | scouts | 10    |       |      | 2
    riders        | hill rider | riders | 5     | 5     |      | 3
    the cart      | ox cart    | cart   | 1     | 1     |      | 4`),
  extras: rowsOf(`
    item             | price | serves
    pointed brush    | 6.50  | 80
    tufts of grass   | 4.20  | 40`),
  log: [],
  settings: rowsOf(`
    name     | value
    currency | EUR
    locale   | en
    restock  | army`),
  columns: [],
};

/** Reads a table whose first line names the columns and whose bars part the cells. */
function rowsOf(table: string): ExampleRow[] {
  const [headers = [], ...rows] = table
    .trim()
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()));
  return rows.map((cells) => new Map(headers.map((header, at) => [header, cells[at] ?? ''])));
}
