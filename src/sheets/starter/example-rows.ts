// Starter: common ways of working and kinds of figures to copy, in a small invented army that plans without a problem. In: nothing. Out: its rows, sheet by sheet, as text.
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
    Fern stain   | 17      |        |         | 3.20  | dropper   |         | 2000310000118 | rack 2
    Clay stain   | 17      | half   |         | 3.20  | dropper   |         | 2000310000125 | rack 2
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
    Fern stain   | wash     | #5d6b3a |         |              |      |         |
    Clay stain   | wash     | #96694a |         |              |      |         |
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
    south shop | fern 17 ml       | 3.20  | Fern stain   | 17      |      |           | dropper   | 2000310000118
    south shop | clay 17 ml       | 3.20  | Clay stain   | 17      |      |           | dropper   | 2000310000125
    south shop | gravel 100 ml    | 6.40  | Brook gravel | 100     |      |           | tube      | 2000310000095`),
  shops: rowsOf(`
    shop       | postage | free from | least order
    north shop | 3.90    | 30        |
    south shop | 4.50    |           | 10`),
  figures: rowsOf(`
    figure           | eye mm | build  | long mm | dress   | kit                         | base       | base high mm | box mm   | price
    foot with shield | 28     |        |         | clothed | weapon, round shield        | round 25   |              |          | 1.50
    bow              | 28     |        |         | clothed | weapon, bow                 | round 25   |              |          | 1.50
    rider            | 28     | heroic |         | clothed | weapon, round shield, horse | 25x50      | 4            |          | 4.20
    gun crew         | 28     |        |         | clothed | weapon                      | round 25   |              |          | 1.50
    gun              |        | engine | 60      |         |                             |            |              |          | 6
    beast            |        | beast  | 30      |         |                             | oval 60x35 |              |          | 7.50
    wagon            |        |        |         |         |                             |            |              | 60x30x25 | 8
    wall             |        | wall   | 120     |         |                             |            |              |          | 3
    house            |        | house  | 90      |         |                             |            |              |          | 14`),
  zones: rowsOf(`
    zone          | parts                                                          | figure
    coat          | front trunk, back trunk, buttocks, groin, upper arms, forearms |
    shield or bow | round shield, bow                                              |`),
  schemes: rowsOf(`
    scheme       | step | zone             | layer          | paint        | coats | method | area % | thin | share | like
    plain        | 1    | all              | primer         | Chalk primer |       |        |        |      |       |
    plain        | 2    | coat             | base coat      | Oat          |       |        |        |      |       |
    plain        | 3    | trousers         | base coat      | Slate        |       |        |        |      |       |
    plain        | 4    | boots, base edge | base coat      | Peat         |       |        |        |      |       |
    plain        | 5    | skin             | base coat      | Bone         |       |        |        |      |       |
    plain        | 6    | weapon           | base coat      | Steel        | 1     |        |        |      |       |
    plain        | 7    | shield or bow    | base coat      | Rust         |       |        |        |      |       |
    plain        | 8    | whole            | wash           | Soot wash    |       |        |        |      |       |
    plain        | 9    | coat             | highlight      | Oat          |       |        |        |      | 2     |
    plain        | 9    | coat             | highlight      | Bone         |       |        |        |      | 1     |
    plain        | 10   | all              | varnish        | Pale varnish |       |        |        |      |       |
    plain        | 11   | base top         | basing         | Brook gravel |       |        |        |      |       |
    plain riders | 7    | horse            | base coat      | Peat         |       |        |        |      |       | plain
    plain riders | 9    | horse            | drybrush       | Oat          |       |        | 20     |      |       | plain
    careful      | 8    | coat             | tidy-up        | Oat          |       |        |        |      |       | plain
    careful      | 8    | trousers         | midtone        | Slate        |       |        |        |      |       | plain
    careful      | 9    | coat             | edge highlight | Bone         |       |        |        | 0.5  |       | plain
    careful      | 9    | belt             | detail         | Rust         |       |        |        |      |       | plain
    quick        | 1    | all              | primer         | Chalk primer |       |        |        |      |       |
    quick        | 2    | coat             | base coat      | Fern stain   | 1     | flood  |        |      |       |
    quick        | 2    | skin, legs, feet | base coat      | Clay stain   | 1     | flood  |        |      |       |
    quick        | 3    | weapon           | base coat      | Steel        | 1     |        |        |      |       |
    quick        | 4    | all              | varnish        | Pale varnish |       |        |        |      |       |
    quick        | 5    | base             | basing         | Brook gravel |       |        |        |      |       |
    drybrushed   | 1    | all              | primer         | Chalk primer |       |        |        |      |       |
    drybrushed   | 2    | all              | base coat      | Peat         | 1     |        |        |      |       |
    drybrushed   | 3    | all              | wash           | Soot wash    |       |        | 50     |      |       |
    drybrushed   | 4    | all              | drybrush       | Bone         |       |        |        |      |       |
    stone        |      |                  | base coat      | Slate        |       |        |        |      |       | drybrushed`),
  swaps: [],
  army: rowsOf(`
    unit         | figure           | scheme       | count | batch | done | priority
    first scouts | foot with shield | plain        | 10    |       | 2    | 1
    bows         | bow              | careful      | 5     |       |      | 2
    riders       | rider            | plain riders | 5     | 5     |      | 3
    gun crew     | gun crew         | quick        | 3     |       |      | 4
    the gun      | gun              | drybrushed   | 1     | 1     |      | 5
    beasts       | beast            | drybrushed   | 2     |       |      | 6
    the wagon    | wagon            | drybrushed   | 1     | 1     |      | 7
    walls        | wall             | stone        | 3     |       |      | 8
    the house    | house            | stone        | 1     | 1     |      | 9`),
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
