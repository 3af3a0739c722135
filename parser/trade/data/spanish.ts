import type { Sheet } from '../sheet.ts';

/** Spanish that crews mix in, where it has no English name to stand beside. */
export const SPANISH: Sheet[] = [
  {
    kind: 'material',
    counter: 'hardware',
    lines: `taquete; taquetes, taquete de plastico; @bag
tuerca; tuercas, rondana, rondanas; @bag
grapa; grapas; @box
pija; pijas; @box
alambron; cadena; @roll
resistol; pegamento blanco; @bottle
broca; brocas, disco, discos; @each
guantes; trapos; @box
bolsas de basura; bolsas; @box
cubeta; cubetas, bote; @each`,
  },
  {
    kind: 'material',
    counter: 'lumber',
    lines: `triplay; hoja de triplay; @sheet
polin; polines, barrote, barrotes; @each
tabla; tablas, tablon, tablones; @each
viga; vigas; @each
moldura; molduras, zoclo, zoclos; @stick
duela; duelas; @box
barandal; pasamanos; @ft
repisa; repisas, entrepaño; @each
dos por cuatro; cuatro por cuatro, dos por seis; @each`,
  },
  {
    kind: 'material',
    counter: 'concrete',
    lines: `bulto de cemento; bulto, bultos, bultos de cemento; @bag
cal; mortero; @bag
tabique; piedra; @each
malla; malla electrosoldada; @roll
gravilla; adoquin; @ton
cimbra; cimbras; @each`,
  },
  {
    kind: 'material',
    counter: 'drywall',
    lines: `panel de yeso; hoja de tablaroca, tabla roca; @sheet
pasta; perfacinta; @bucket
esquinero; esquineros; @each
fibra de vidrio; aislamiento; @roll`,
  },
  {
    kind: 'material',
    counter: 'paint',
    lines: `sellador; impermeabilizante, barniz, esmalte; @bucket
masilla; resanador; @tub
cinta azul; @roll
estopa; plastico; @roll`,
  },
  {
    kind: 'material',
    counter: 'tile',
    lines: `losetas; piso ceramico, porcelanato, ceramica; @box
pegapiso; pega azulejo; @bag
crucetas; cruceta; @bag
marmol; granito; @sq ft`,
  },
  {
    kind: 'part',
    counter: 'plumbing',
    lines: `cople; coples; @each
valvula; valvulas, llave de agua; @each
empaque; empaques; @each
cespol; sifon, coladera, coladeras; @each
flotador; sapo; @each
bomba; bomba de agua; @each
tinaco; cisterna; @each
cinta teflon; teflon; @roll
monomando; mezcladora de agua; @each`,
  },
  {
    kind: 'fixture',
    counter: 'plumbing',
    lines: `taza; taza del baño; @each
lavamanos; fregadero doble; @each
calentador de agua; boiler de gas; @each`,
  },
  {
    kind: 'part',
    counter: 'electrical',
    lines: `chalupa; chalupas, caja electrica; @each
pastilla; pastillas, centro de carga; @each
poliducto; tubo conduit flexible; @roll
ventilador; abanico; @each
lampara led; lamparas; @each
timbre; extension electrica; @each`,
  },
  {
    kind: 'fixture',
    counter: 'doors',
    lines: `marco; marcos; @each
cajon; cajones; @each
manija; manijas, jaladera, jaladeras; @each
persiana; persianas, mosquitero; @each
espejo; espejos; @each
alacena; closet de madera; @each
cancel; porton, reja; @each`,
  },
  {
    kind: 'tool',
    lines: `rotomartillo; esmeril, pulidora, cortadora
llana; cuchara, espatula
brocha; brochas, rodillo, rodillos
manguera; mangueras
carretilla; mezcladora, compresor
serrucho; caladora, pinzas, pinza, destornillador
mazo; barreta, talacho, azadon
herramienta; herramientas
plomada; generador`,
  },
  {
    kind: 'area',
    lines: `recamara principal; cuarto principal
baño principal; medio baño
cuarto de lavado; lavadero
patio trasero; jardin de atras
primer piso; segundo piso, tercer piso, planta baja, planta alta
parte de atras; parte trasera
cuarto de maquinas; cochera doble
vestidor; corredor, terraza`,
  },
  {
    kind: 'role',
    lines: `maestro; oficial
muchachos; los muchachos, muchacho
herrero; albanil
trabajador; trabajadores, obrero, obreros
chofer; vendedor`,
  },
  {
    kind: 'defect',
    lines: `se rompio; se rompió, rompió, se quebro, se quebró, quebrado, quebrada
gotera; goteras, humedad, mojada
descuadrado; desnivelado, torcida, chueca, doblada
no prende; no jala, no calienta
no cierra bien; no abre bien
atascado; atascada, tapado el drenaje
quemada; cuarteado, cuarteada, rajada, agrietada, astillado
manchada; sucia, oxidada, hinchada, dañada, rayada, despegada
faltante; mal puesto, mal instalado, al revés`,
  },
];
