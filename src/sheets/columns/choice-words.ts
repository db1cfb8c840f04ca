// Columns: what else painters write for the words that cells are chosen from. In: nothing. Out: words by the word that they
// stand for. Dictionary words and the trade's: English, German, French, Spanish, Italian, Dutch, Polish.
import type { Container, Dress, KitItem, Layer, Opacity, PaintKind } from '../../model/words.js';

/** For some words of a list, what else they are called, parted by commas. */
export type Called<T extends string> = Readonly<Partial<Record<T, string>>>;

export const containerWords: Called<Container> = {
  dropper:
    'dropper bottle, Tropfflasche, Tropfer, compte-gouttes, cuentagotas, contagocce, druppelflesje, druppelflacon, zakraplacz',
  pot: 'jar, Topf, Töpfchen, Glas, bote, frasco, vasetto, barattolo, potje, słoik, słoiczek',
  tube: 'Tube, tubo, tubetto, tubka',
  can: 'spray, spray can, aerosol, Spraydose, Sprühdose, bombe, bombe aérosol, aérosol, bote de spray, bomboletta, bomboletta spray, spuitbus',
};

export const kindWords: Called<PaintKind> = {
  colour: 'color, Farbe, couleur, colore, kleur, kolor',
  metallic: 'metal, Metall, Metallic, métallique, métal, metálico, metallico, metaliczna, metaliczny',
  wash: 'shade, Waschung, lavis, lavado, lavaggio, wassing',
  medium: 'Malmittel, médium',
  primer: 'undercoat, Grundierung, sous-couche, apprêt, imprimación, fondo, grondverf, podkład',
  varnish: 'Klarlack, Schutzlack, vernis, barniz, vernice protettiva, lakier',
  texture:
    'Strukturpaste, Struktur, pâte texturée, textura, pasta de textura, pasta strutturale, structuurpasta, pasta strukturalna',
};

/** Of three grades `good` is the best and `poor` the worst. */
export const opacityWords: Called<Opacity> = { strong: 'good', fair: 'medium', weak: 'poor' };

export const dressWords: Called<Dress> = { armoured: 'armor, armour, armored' };

export const kitWords: Called<KitItem> = { weapon: 'spear, sword' };

export const layerWords: Called<Layer> = {
  primer: kindWords.primer ?? '',
  'base coat':
    'base colour, base color, Grundfarbe, Basisfarbe, couche de base, capa base, color base, base di colore, colore di base, basislaag, basiskleur, kolor bazowy, warstwa bazowa',
  midtone: 'mid tone, Mittelton, ton moyen, tono medio, middentoon, półton',
  wash: kindWords.wash ?? '',
  glaze: 'Lasur, glacis, veladura, velatura, laserunek',
  drybrush:
    'dry brush, dry brushing, Trockenbürsten, brossage à sec, pincel seco, pennello asciutto, drybrushen, suchy pędzel',
  highlight:
    'Akzent, Aufhellung, éclaircissement, luz, iluminación, lumeggiatura, luce, oplichting, rozjaśnienie',
  'edge highlight': 'edging, Kantenakzent, perfilado, lumeggiatura dei bordi',
  detail: 'details, Detail, détail, detalle, dettaglio, detal',
  varnish: kindWords.varnish ?? '',
  basing: 'Sockelgestaltung',
};

/** By ready-made zone or part. */
export const zoneWords: Readonly<Record<string, string>> = {
  all: 'everything, alles, tout, todo, tutto, wszystko',
  whole:
    'whole figure, ganze Figur, figura entera, toute la figurine, tutta la figura, hele figuur, cała figurka',
  face: 'Gesicht, visage, cara, rostro, viso, volto, gezicht, twarz',
  skin: 'Haut, peau, piel, pelle, huid, skóra',
  hair: 'Haare, Haar, cheveux, pelo, cabello, capelli, włosy',
  eyes: 'Augen, yeux, ojos, occhi, ogen, oczy',
  head: 'Kopf, tête, cabeza, testa, hoofd, głowa',
  hands: 'Hände, mains, manos, mani, handen, dłonie',
  tunic: 'Tunika, tunique, túnica, tunica, tuniek, tunika',
  trousers: 'pants, Hose, pantalon, pantalones, pantaloni, broek, spodnie',
  sleeves: 'Ärmel, manches, mangas, maniche, mouwen, rękawy',
  boots: 'Stiefel, bottes, botas, stivali, laarzen, buty',
  belt: 'Gürtel, ceinture, cinturón, cintura, riem, pasek',
  legs: 'Beine, jambes, piernas, gambe, benen, nogi',
  torso: 'Rumpf, torse, torso, romp, tułów',
  cloak: 'Umhang, cape, capa, mantello, mantel, płaszcz',
  weapon: 'Waffe, arme, arma, wapen, broń',
  bow: 'Bogen, arc, arco, boog, łuk',
  horse: 'Pferd, cheval, caballo, cavallo, paard, koń',
  base: 'Sockel, socle, peana, basetta, voetstuk, podstawka',
};

export const baseWords: Called<'round' | 'square' | 'oval' | 'rectangle' | 'none'> = {
  round: 'rund, runde, rond, ronde, redonda, redondo, tonda, tondo, rotonda, okrągła, okrągły',
  square:
    'quadratisch, carré, carrée, cuadrada, cuadrado, quadrata, quadrato, vierkant, kwadratowa, kwadratowy',
  oval: 'ovale, ovalada, ovalado, owalna, owalny, ovaal',
  rectangle: 'rechteckig, rectangulaire, rectangular, rettangolare, rechthoekig, prostokątna, prostokątny',
  none: 'keine, kein, aucun, sans, ninguna, sin, nessuna, geen, brak',
};

/** What armies are counted in. */
export const figureWords =
  'figures, figure, models, minis, miniatures, pcs, pieces, Figuren, Modelle, Miniaturen, Stück, Stk, figurines, pièces, figuras, modelos, miniaturas, piezas, modelli, miniature, pezzi, figuren, modellen, stuks, figurek, figurki, modeli, sztuk, szt';

/** For what was paid: nothing. */
export const giftWords =
  'gift, free, present, Geschenk, geschenkt, cadeau, offert, regalo, regalado, regalato, omaggio, gekregen, prezent';
