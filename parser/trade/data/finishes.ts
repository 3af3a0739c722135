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
treated; pressure-treated, pt
composite; ~composit
matte; matt, flat; ~mat finish
eggshell; ~egg cell, ex shell, eggs shell, exshell
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
dimmable; non dimmable
greige; taupe, khaki
gunmetal; pewter
gold; rose gold, brushed gold, matte gold, champagne
mill finish; anodized, clear anodized
powder coated; powder coat
wrought iron; raw steel
purple; pink, maroon, burgundy, teal, turquoise, sage, olive
two tone; multi color
blanca; negra, roja
glossy; low sheen, high sheen, mirror finish
rough sawn; hand scraped, wire brushed, distressed
leathered; flamed, tumbled, bush hammered
unpainted; factory painted
knotty; quarter sawn, rift cut, flat sawn
medium duty; light duty
fire retardant; ground contact
impact rated; hurricane rated
low e; argon filled
obscure; translucent
single glazed; double glazed, triple pane
acoustic; soundproof
energy efficient; high efficiency
low voc; zero voc
mildew resistant; stain resistant
uv resistant; uv rated
lead free
hardwired; hard wired, battery operated
motorized; cordless
surface mount; surface mounted, wall mounted, floor mounted, ceiling mounted
double sided; single sided
keyed alike; self locking, lockable
lhr; rhr, reverse bevel
shaker; shaker style, full overlay, half overlay, partial overlay, inset, frameless
beech; larch, cypress, sapele, basswood, rosewood
jarrah; spotted gum, iroko
roble; pino, cedro, caoba, nogal
aluminum; aluminium, fiberglass, zinc plated, galvanized steel
wood grain; wood look, stone look, marble look
chrome plated; nickel plated, brass plated
cold rolled; hot rolled, corten
3000k; 3500k, 4000k
single phase; three phase`,
  },
];
