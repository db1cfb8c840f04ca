// Bench: open models that the factors of creatures and things are held against. In: nothing. Out: collections, and by kind
// the names of models. Of each kind every second name is kept apart: no factor was set from it.

/** Two data packages of Debian 12, known by version and licence, unpacked with `dpkg-deb -x`; the first one's archive of meshes too, into `meshes`. */
export const collections = {
  first: { version: '0.0.26-1', licence: 'CC BY-SA 3.0', date: '2022', ending: '.dae.cached.pmd' },
  second: {
    version: '3.13.0-3',
    licence: 'CC BY-SA 3.0',
    date: '2007 to 2011',
    ending: '.g3d',
  },
};

const words = (text) => text.trim().split(/\s+/);
const first = (folder, names) => words(names).map((name) => `first:${folder}/${name}`);
const second = (names) => words(names).map((name) => `second:${name}`);
const beasts = (names) => first('skeletal', names);
const things = (names) => first('structural', names);

/**
 * Models of a kind stand by the alphabet of what they are called in English. Those that stand on closed ground are cut off
 * there, and nobody looks in from below.
 */
export const kinds = {
  beast: {
    models: [
      ...beasts('auroch_a bear animal_boar camel cattle_female_a deer_mesh donkey elephant_african_bush'),
      ...beasts('elephant_asian_male fox giraffe_adult goat fauna_hippopotamus horse animal_lion'),
      ...second(`norsemen/units/cow/models/cow_standing norsemen/units/wild_sow/models/pig_standing
                 persian/units/sheep/models/sheep_standing`),
      ...beasts('mastiff muskox pig pony rhino sheep tiger wildebeest_adult wolf zebra zebu'),
    ],
    length: 'back',
  },
  winged: {
    models: [
      ...beasts('crow dragon seagull hawk'),
      ...second('egypt/units/ibis/models/ibis_standing magic/units/dragon/models/dragon_standing'),
    ],
    length: 'long',
  },
  engine: {
    models: [
      ...second(`romans/units/ballista/models/ballista_idle romans/units/battering_ram/models/battering_ram_idle
                 tech/units/battle_machine/models/battle_machine_standing romans/units/catapult/models/catapult_idle
                 tech/units/catapult/models/catapult_standing`),
      ...things('celt_siege_ram han_mangonel han_siege_shoushe hele_lithobolos hele_oxybeles iber_ram'),
      ...things('kart_ballista mace_siege_ram maur_siege_ram pers_ram ptol_polybolos rome_ballista rome_ram'),
      ...things('siege_onager'),
    ],
    length: 'long',
    stands: true,
  },
  wall: {
    models: first(
      'structural',
      ['brit', 'gaul', 'han', 'hele', 'iber', 'kart', 'kush', 'pers', 'ptol', 'rome', 'sele']
        .map((name) => `${name}_wall_long ${name}_wall_medium ${name}_wall_short`)
        .concat('maur_wall_long_palisade maur_wall_medium_palisade maur_wall_short_palisade')
        .concat('maur_wall_long_struct maur_wall_medium_struct maur_wall_short_struct')
        .concat('palisade_bamboo_long palisade_bamboo_medium palisade_bamboo_short')
        .join(' '),
    ).sort(),
    length: 'long',
    stands: true,
  },
  house: {
    models: [
      ...things(
        `brit_house_01 brit_house_02 brit_house_03 brit_house_04 celt_house_d gaul_house_a gaul_house_b gaul_house_c gaul_house_d
         han_house_a han_house_b han_house_c han_house_d hele_house_a hele_house_b hele_house_c hele_house_d hele_house_e`,
      ),
      ...second('norsemen/units/house/models/house persian/units/house/models/house'),
      ...things(
        `iber_house_1 iber_house_2 iber_house_3 iber_house_4 iber_house_5 kush_house_1 kush_house_2 kush_house_3 kush_house_4
         maur_house_a maur_house_b maur_house_c maur_house_d pers_house_a pers_house_b pers_house_c pers_house_d
         ptol_house_01 ptol_house_02 ptol_house_03 ptol_house_04 ptol_house_05 roman_house_a roman_house_b roman_house_c
         roman_house_d sele_house_a sele_house_b sele_house_c sele_house_d`,
      ),
    ],
    length: 'long',
    stands: true,
  },
  giant: {
    models: second(`magic/units/behemoth/models/behemoth_standing magic/units/daemon/models/daemon_standing
                    magic/units/golem/models/golem_standing magic/units/wicker_behemoth/models/wicker_behemoth
                    norsemen/units/thor/models/thor_standing`),
    length: 'high',
    figure: { dress: 'bare', build: 'giant' },
  },
  'clothed person': {
    models: second(`egypt/units/mummy/models/mummy_standing magic/units/initiate/models/initiate_standing
                    norsemen/units/thrall/models/worker_standing tech/units/worker/models/worker_standing`),
    length: 'high',
    figure: { dress: 'clothed', build: 'true scale' },
  },
  'armoured person with a weapon': {
    models:
      second(`norsemen/units/swordman/models/armored_swordman_standing norsemen/units/valkyrie/models/valkyrie_standing
                    tech/units/guard/models/guard_standing tech/units/swordman/models/swordman_standing`),
    length: 'high',
    figure: { dress: 'armoured', build: 'true scale', kit: [{ item: 'weapon', count: 1 }] },
  },
};
