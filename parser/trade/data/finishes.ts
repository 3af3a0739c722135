import type { Sheet } from '../sheet.ts';

/** Colours, finishes, ratings, hands, species: what follows an item as its description. */
export const FINISHES: Sheet[] = [
  {
    kind: 'finish',
    lines: `white; blanco, pure white
off white; antique white, linen white
bright white
almond; ivory, cream
bone; biscuit
gray; grey, gris
light gray; light grey
dark gray; dark grey, charcoal
silver
black; negro
matte black; flat black; ~mat black
oil rubbed bronze; orb finish; ~oil robbed bronze
bronze; antique bronze
brushed nickel; satin nickel, nickel; ~brush nickel, brushed pickle
chrome; polished chrome; ~crome
brass; polished brass, satin brass, antique brass
champagne bronze
stainless; stainless steel
galvanized; galv, galvanised; ~galvinized
hot dipped; hot dip
tan; beige, sand color
brown; dark brown
clear
primed; pre-primed, preprimed
unfinished
prefinished; factory finished; ~pre finish
red; rojo
blue; azul
green; verde
yellow; amarillo
navy; navy blue
orange
treated; pressure-treated
composite; ~composit
matte; matt, flat; ~mat finish
eggshell; ~egg cell
gloss finish; high gloss
honed; ~honed in
brushed finish; satin finish
wet rated; damp rated
exterior grade; outdoor rated, exterior rated
interior grade
moisture resistant; water resistant, mold resistant
fire rated; fire resistant
tempered
insulated; uninsulated
braided
flexible; rigid
adjustable
weatherproof; weather resistant, waterproof
tamper resistant
soft close; self closing
left hand; left handed, lh
right hand; right handed, rh
inswing
outswing
satin etched; frosted
low profile; flush mounted
heavy duty; commercial grade
self adhesive; peel and stick; ~peel in stick
oak; white oak, red oak
maple
pine; yellow pine
cedar; western red cedar; ~seeder
walnut
birch; ~burch
poplar
fir; doug fir, douglas fir
redwood
hemlock
ash wood
spruce; spf
mahogany; ipe, teak
cherry; alder
hickory
warm white; soft white, 2700k, twenty seven hundred k
daylight; cool white, 5000k
dimmable; non dimmable`,
  },
];
