import type { Sheet } from '../sheet.ts';

/** The plumbing counter. */
export const PLUMBING: Sheet[] = [
  {
    kind: 'material',
    counter: 'plumbing',
    lines: `pipe; supply pipe, poly pipe, tubo, tubo de agua, tuberia; @stick, ft
copper pipe; copper, tubo de cobre, type l, type m, soft copper; ~cop her pipe, cooper pipe, copper pie, copper pike; @stick, ft
pvc pipe; pvc, schedule 40, schedule forty; ~p v c; @stick
cpvc; cpvc pipe; ~c p v c; @stick
abs pipe; abs; ~a b s; @stick
cast iron pipe; cast iron, soil pipe; ~cast island pipe; @stick
drain pipe; waste pipe, dwv pipe; @stick, ft
black pipe; black iron, gas pipe, black iron pipe; @stick
galvanized pipe; galvanised pipe, galv pipe; @stick
pex; pex pipe, pex tubing, pex line, pex-a, pex-b; ~pecks, packs, pecs, peks, pecs pipe, pexx, pets, pegs pipe, peck's; @roll, ft
polybutylene; poly b; @ft
stainless gas line; csst, flexible gas line; @ft
solder; lead free solder; ~sodder, sauder, sawder; @roll
flux; soldering flux, paste flux; ~flucks, flocks; @can
thread tape; plumber's tape, ptfe tape, pipe tape, thread seal tape; ~thread cape; @roll
pipe dope; thread sealant, pipe compound, pipe joint compound; ~pipe dough, pipe hope, pipe top; @can, tube
plumber's putty; putty; ~puddy, plumbers puddy, plumber's puddy, party putty, plumbers buddy; @tub
solvent cement; pvc cement, pvc glue, primer and cement, abs cement, cpvc cement; @can
purple primer; pvc primer, clear primer; @can
pipe insulation; pipe wrap, lagging, foam pipe insulation; @each, ft
heat tape; pipe heating cable; @each
gas flex; flex line, gas connector; @each
drain cleaner; enzyme cleaner; @bottle
leak detector fluid; leak detection fluid; @bottle
pipe sleeve; sleeve; @each
refrigerant tubing; ice maker tubing; @roll
waste hose; corrugated hose; @ft
sewer pipe; sdr 35, sdr pipe, thin wall pvc; @stick
corrugated gas tubing; corrugated stainless tubing, yellow gas flex, yellow gas tubing; @roll
water service tubing; service tubing, plastic tubing, barrier pipe, blue poly; @roll, ft
condensate tubing; overflow tubing, vinyl tubing, clear tubing; @ft
pipe repair tape; self fusing tape, rescue tape, gas tape, yellow tape, pipe wrap tape; @roll
descaler; scale remover, drain maintainer; @bottle
boiler inhibitor; inhibitor, system cleaner; @bottle
antifreeze; glycol, propylene glycol; @gal
softener salt; water softener salt; @bag
faucet grease; silicone grease, plumber's grease; @tube`,
  },
  {
    kind: 'part',
    counter: 'plumbing',
    lines: `elbow; ell, ninety, ninety degree elbow, 90, 90s, codo, nineties, ells; ~elbos, el bow, l bow, elbo, hell bow, cooper elbow; @each, bag
street elbow; street ninety, street ell; @each
drop ear elbow; drop ear, winged elbow; ~drop here elbow, drop your elbow; @each
forty five; 45 elbow, forty five degree elbow, forty fives, 45, 45s; @each
long sweep elbow; long sweep, sweep ninety; @each
twenty two and a half elbow; twenty twos, 22, 22s, eighth bend, sixteenth bend, quarter bend; @each
tee; plumbing tee, reducing tee; ~tea; @each
sanitary tee; san tee; ~sanitary tea, santy, sand tea, sandy t; @each
wye; y fitting, combo wye, double wye; ~why fitting, why; @each
coupling; coupler, union, slip coupling, repair coupling; ~cup link, cupling, couple ling, cup ling, onion, cup pling, copeling, couple in; @each
no hub coupling; no-hub, shielded coupling, rubber coupling, banded coupling, flexible coupling; ~no hope coupling; @each
dielectric union; dielectric; ~die electric union, dye electric; @each
adapter; adaptor, male adapter, female adapter, transition fitting; @each
trap adapter; marvel adapter; @each
bushing; reducer bushing, reducing bushing; ~bush in, bushin; @each
nipple; pipe nipple, brass nipple; @each
push fit fitting; push fit, push to connect, push-fit coupling, push connect fitting; @each
compression fitting; compression ring, ferrule, compression sleeve, compression nut; ~ferule, feral, fair rule, compassion fitting, compress in fitting; @each
flare fitting; flare nut; ~flair fitting; @each
pex ring; crimp ring, cinch ring, pex crimp, cinch clamp, expansion ring; ~pecks crimp, pecks ring, crimp bring, crimp wring, crimps ring, pecks crimp ring; @bag
pex elbow; ~pecks elbows, pecks elbow; @each, bag
pex tee; ~pecks tea, pecks tee; @each
pex coupling; ~pecks coupling; @each
pex manifold; manifold, water manifold; ~many fold, manny fold, man a fold, manly fold; @each
end cap; cap, test cap, plug cap, pipe cap; @each
test plug; test ball, pipe plug; @each
p-trap; trap, bottle trap, sink trap; ~pea trap, pee trap, pizza trap, pee trip, pea tramp, p trip, beat rap, p trapped, peat trap, key trap, pee track, p tramp; @each
s-trap; @each
drum trap; @each
shutoff valve; shutoff, shut off, shut off valve, stop valve, isolation valve, isolator, stop tap, llave de paso, stopcock; ~shot off, shut of valve, stop caulk, stop clock, stop cog; @each
angle stop; quarter turn stop, quarter turn, supply stop, straight stop; ~ankle stop, angel stop; @each
ball valve; valve, llave; ~bald valve, wall valve, ball of, bowl valve, ball bell, balled valve, ball vowel, ball valley; @each
gate valve; globe valve; ~gait valve, gate valf, great valve; @each
check valve; non return valve; ~czech valve, chick valve, cheque valve, chuck valve; @each
backflow preventer; backflow, double check valve, vacuum breaker, rpz; ~black flow, back flow prevent her, black flow preventer, backflow prevent her; @each
stop and waste valve; curb stop; @each
gas valve; gas cock, gas shutoff, appliance gas valve; @each
pressure regulator; prv, pressure reducing valve, gas regulator; @each
relief valve; t&p valve, t and p, tpr valve, temperature relief valve, t&p, t and p valve; ~relief of, t and pee valve, tea and pea valve, teen pea valve, relieve valve, relief wall, relief vow; @each
mixing valve; tempering valve, thermostatic mixing valve, tmv; ~mix in valve; @each
recirculation pump; recirc pump, circulator, circulator pump; @each
fill valve; ballcock, float valve; ~phil valve, feel valve, field valve, full valve, fill wall, fill vowel; @each
flapper; flush valve, flush valve seal; ~flopper, flapping, flap her, slapper; @each
flush handle; tank lever, toilet handle; @each
tank bolts; tank to bowl kit, tank gasket; @kit
wax ring; toilet seal, wax free seal, pan connector, wax seal; ~wax rink, wax string, wack ring, wax wing, whacks ring, wax rang, wax bring, wax wring, wax rain, whacks wring; @each
closet bolt; johnny bolt, toilet bolt, floor bolt; ~closed bolt; @pair
closet flange; toilet flange, flange; ~flanj, flinch, fringe, clause it flange, flans, closet flank, close it flank, closet flinch, closet flans, toilet flans, toilet flank, closet fling, toilet fling, closet plunge, toilet flinch, toilet range; @each
flange extender; flange repair ring, flange spacer, spanner flange; @each
supply line; flexi hose, flex connector, braided line, supply hose, flexible connector, supplies, flexi, braided hose; ~supplied line, supply lion, supply lime, apply line; @each
ice maker line; ice maker box, ice maker kit; @each
washer hose; washing machine hose, braided washer hose; @each
washer box; washing machine box, laundry box, washer outlet box; @each
dishwasher hose; dishwasher drain hose, air gap, dishwasher kit; ~air cap, hair gap; @each
drain; sink drain, desague, drain assembly; ~drane; @each
floor drain; trench drain, hub drain; @each
shower drain; @each
tub drain; waste and overflow, bath waste, tub waste; @each
basket strainer; strainer, sink strainer; ~basket trainer; @each
disposal flange; @each
drain cover; drain grate, strainer cover; @each
pop up; pop up drain, pop up assembly, drain stopper, stopper; @each
overflow; overflow gasket, overflow plate, overflow cover, tub overflow; ~over flow play, overflow played, overflow plait, over flow plate; @each
tailpiece; extension tube, tail piece, slip joint extension, tailpipe; ~tale piece, tail peace, tale peace, tell piece, tail please; @each
slip joint washer; slip washer, beveled washer; @each
slip nut; slip joint nut; ~slip not; @each
trap arm; @each
gasket; o ring, rubber washer, packing, flat gasket; ~gas kit, casket, gaskit; @each
cartridge; shower cartridge, faucet cartridge, mixing cartridge, ceramic disc; ~cartilage, cartrage, cartage, partridge; @each
faucet stem; stem, valve stem, seat washer; @each
aerator; faucet aerator; ~air eater, airator, area tour; @each
faucet handle; handle kit; @each
escutcheon; trim ring, trim plate, flange cover; ~escutchen, scotchin, a scutcheon, a scotch in, skutchin, es cushion, escort chin, escutchin, is cushion, escaution, a scuttle; @each
shower head; hand shower, rain head, handheld shower; @each
shower arm; @each
shower trim; trim kit, valve trim; @each
diverter; diverter valve, tub diverter; ~diverder, die verter, diver tour, divert her, the verter, die vert her; @each
tub spout; spout; ~tub spot, tub spouse, spout out, tub sprout; @each
cleanout; clean out, cleanout plug, cleanout cover, rodding point; ~clean oat, clean now, clean ow, clean nowt, clean ought, clean owt; @each
vent pipe; vent stack, stack; ~vent stag, vent stuck; @each
air admittance valve; aav; @each
roof boot; vent boot, pipe boot, pipe flashing; @each
sump pump; sump, pedestal pump; ~some pump, sub pump, sum pump, sump bump, stump pump, some pomp, sumo pump; @each
pump; condensate pump, sewage pump, ejector pump, transfer pump; ~injector pump, condensed pump, condensate bump, condense eight pump, condensation bump; @each
pump check valve; @each
sump basin; sump pit, ejector pit; @each
well pump; pressure tank, pressure switch; ~precher tank, pressure tang; @each
hose bib; hose bibb, sillcock, outdoor faucet, spigot, outside tap, garden tap, frost free, frost free sillcock; ~hose bid, hose bit, hose bed, host bib, sill caulk, sill clock, seal cock, hoes bib, hose babe, house bib; @each
expansion tank; ~expensive tank, expansion thank, expansion tang; @each
hammer arrestor; water hammer arrestor, arrestor, hammer arrester; ~hammer rester; @each
anode rod; anode; ~a node rod, and no drod, an owed rod, an ode rod, a note rod, anna rod; @each
heating element; element, water heater element; @each
thermocouple; flame sensor; ~thermal couple; @each
drip pan; water heater pan; @each
water filter; filter housing, sediment filter; @each
water softener; softener, conditioner; @each
reverse osmosis filter; ro system, ro filter; @each
sprinkler head; sprinkler; ~sprinkle head, sprinkle her head, springler head; @each
hose clamp; @each
pipe clamp; hanger strap, clevis, clevis hanger, talon clip, pipe clip, munsen ring; @each
stub out bracket; pipe bracket, sleeve bracket; @each
riser clamp; @each
pipe hanger; plumber's strap, hanger iron, band iron; @each
water meter; @each
gas meter; @each
roof drain; scupper; ~scoop her, scuffer; @each
septic tank; septic, leach field; @each
grease trap; grease interceptor; @each
tub stopper; toe touch drain; @each
toilet tank part; toilet repair kit; @kit
fitting; pipe fitting, copper fitting, pvc fitting, brass fitting, press fitting, solder fitting, plastic fitting, barb fitting, barbed fitting; @each, bag
closet bend; toilet bend; @each
drain cock; drain off cock; @each
backwater valve; backwater flap, non return flap; @each
pressure relief; thermal expansion relief; @each
balance spool; pressure balance spool; @each
monobloc; monobloc tap; @each
cistern; toilet cistern, concealed cistern; @each
flush button; dual flush button, flush plate; @each
toilet shim; bowl wax; @each
sink clip; undermount clip, sink mounting clip; @pack
sprayer head; side sprayer, pull out sprayer; @each
hole cover; sink hole cover; @each
slide bar; shower holder, shower slide; @each
valve body; shower body, rough in body; @each
sink waste; basin waste, shower waste, floor waste, pop up waste, click clack waste, continuous waste, center outlet waste, end outlet waste, waste kit, waste arm; @each
j bend; wall bend, trap bend; @each
standpipe; laundry standpipe, washer standpipe, stand pipe; @each
vent cowl; cowl, flue cowl; @each
manhole; manhole cover, inspection chamber; @each
gully grate; floor sink grate, basin grate, channel grate, atrium grate; @each
saddle fitting; saddle clip, boss strap; @each
split ring; split ring hanger, bell hanger; @each
pipe insulator clip; pipe isolator; @each
strainer basket; sink basket; @each
ejector; sewage ejector, macerator, grinder pump; @each
pump float; sump float; @each
pit lid; sump lid, pit cover; @each
expansion vessel; pressure vessel, bladder tank; @each
heater stand; water heater stand; @each
dip tube; heater dip tube; @each
gas control; gas control valve; @each
pilot; pilot assembly, pilot light; @each
immersion heater; immersion, immersion element; @each
plate exchanger; plate heat exchanger; @each
lockshield; lockshield valve, radiator tail; @each
trv head; rad valve head; @each
filling loop; boiler filling loop; @each
actuator; valve actuator, zone actuator, damper actuator; @each
gas bayonet; bayonet fitting; @each
gas bottle; gas cylinder, propane tank, lp tank; @each
meter box; meter pit, water meter box; @each
anti siphon; anti siphon valve; @each
hydrant; yard hydrant, wall hydrant; @each
meter key; curb key, stop cock key; @each
wall plate elbow; stub out elbow; @each`,
  },
  {
    kind: 'fixture',
    counter: 'plumbing',
    lines: `toilet; wc, commode, water closet, loo, inodoro, escusado, toilet bowl; ~toil it, toilette; @each
toilet tank; toilet lid; @each
toilet seat; seat; @each
bidet; bidet seat; ~b day, bidey; @each
sink; basin, lavatory, lav, lavabo, fregadero; ~sync, zinc; @each
kitchen sink; farm sink, apron sink, undermount sink, drop in sink, belfast sink; ~under mount zinc, under mountain sink, undermount zinc; @each
vessel sink; @each
pedestal sink; pedestal; @each
laundry sink; utility sink, slop sink, laundry tub; @each
mop sink; prep sink, janitor sink, floor sink; @each
bar sink; @each
faucet; tap, mixer tap, mixer, grifo, lav faucet, sink faucet, bath faucet; ~fossil, fossett, faucett, forcet, fosset, fauset, foe set, force it, faw sit; @each
kitchen faucet; pull down faucet, kitchen tap; @each
tub filler; roman tub faucet, bath filler; @each
pot filler; @each
tub; bathtub, bath tub, soaker, tina, bañera, alcove tub; @each
freestanding tub; soaking tub, clawfoot tub; @each
tub surround; shower surround, shower wall panel; @each
whirlpool; jetted tub, hot tub; @each
shower; shower stall, shower unit, enclosure, regadera; @each
shower door; shower glass, shower screen, glass door, glass panel; @each
shower pan; shower base, shower tray, pan; ~shower pen, shower pam, shower pant; @each
shower curb; curb; ~shower curve, shower curbed, shower kerb, shower cub; @each
shower valve; tub valve, thermostatic valve, shower mixer; @each
steam generator; steam unit; @each
vanity; vanity cabinet; ~vanitty, vanilla tea, van a tea, vanatee; @each
vanity top; @each
water heater; hot water heater, calentador, hot water tank, cylinder tank; ~water eater, water here her, waterhead her; @each
tankless heater; tankless, tankless water heater, on demand heater; ~thankless, thankless water heater, tankless water eater; @each
boiler; combi boiler, boiler unit; ~boy learn, boy ler, broiler, boil her, boil err; @each
disposal; garbage disposal, disposer, waste disposal; ~this posal, the sposal, disposed all, garbage dispose all, garbage this posal, garbage disposed; @each
urinal; @each
drinking fountain; water cooler, bottle filler; @each
eye wash; eyewash station; @each
rad; towel rad, heated rad; @each
hot water unit; hot water system; @each
laundry trough; trough sink; @each
shower system; shower cubicle, shower kit; @each
tub shower combo; tub shower, shower over bath; @each
water filtration system; water treatment system, filtration system; @each`,
  },
];
