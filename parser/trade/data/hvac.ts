import type { Sheet } from '../sheet.ts';

/** Heating, cooling and ventilation. */
export const HVAC: Sheet[] = [
  {
    kind: 'material',
    counter: 'hvac',
    lines: `duct sealant; duct mastic, water based mastic; ~duck sealant; @tub
duct insulation; duct wrap, duct liner; @roll
refrigerant; 410a, r410a, r32, r22; ~refrigerate, refrigerator ant; @lb
sheet metal; galvanized sheet; @sheet
line set cover; lineset cover, line hide; @each
coil cleaner; condenser cleaner; @can
nitrogen; nitrogen tank; @each
brazing rod; silver solder, phos copper; ~braising rod; @each
duct board; ductboard, fiberboard duct; @sheet
foil mastic tape; ul tape, hvac tape, silver tape; @roll
rubber pipe insulation; line set insulation; @each
refrigerant oil; leak dye; @bottle
neutralizer media; condensate neutralizer; @each
pan treatment; pan tablets; @each`,
  },
  {
    kind: 'part',
    counter: 'hvac',
    lines: `register; floor register, supply register, vent cover, air vent, wall register; ~red jester, registrar, red jister; @each
diffuser; ceiling diffuser, linear diffuser, slot diffuser; ~the fuser, dee fuser; @each
grille; return grille, grill, return air grille, louver, louvre; @each
egg crate grille; @each
duct; duct work, ductwork, sheet metal duct; ~duck work; @each, ft
flex duct; flexible duct, insulated flex; ~flex duck, flecks duct, flecks duck; @each, ft
round duct; spiral duct, snap lock pipe, round pipe; @each
trunk line; trunk duct, main trunk; ~trump line; @ft
duct elbow; adjustable elbow; @each
takeoff; take-off, duct takeoff, start collar, starting collar; @each
duct boot; boot, register boot, ceiling boot; ~duck boot, ducked boot; @each
plenum; supply plenum, return plenum; ~plenham, plen um, plenty um, plan um, planum, plea num, plane um, plan em; @each
return drop; return box; @each
duct transition; offset duct; @each
damper; balancing damper, backdraft damper, zone damper; ~dampener, dampher; @each
fire damper; smoke damper, fire smoke damper; @each
air filter; filter, furnace filter, media filter; ~furnish filter, fern is filter; @each
filter rack; filter base; @each
furnace; gas furnace; ~furness, furnish, fur nest, fern is, furnice; @each
air handler; fan coil, ahu; ~air hand layer, air handle her, heir handler; @each
blower; blower motor, blower wheel, squirrel cage; @each
inducer; inducer motor, draft inducer; ~in do sir; @each
ignitor; ~ignite her; @each
control board; circuit board, furnace board; @each
limit switch; pressure switch furnace, rollout switch; @each
heat exchanger; @each
condenser; condensing unit, outdoor unit, ac unit, air conditioner; ~condense her, condensor; @each
compressor; ac compressor; ~compress her, come pressor; @each
condenser pad; equipment pad; @each
condenser fan; condenser fan motor; @each
heat pump; heat pump unit; ~heap pump, heat bump; @each
mini split; ductless unit, indoor head, split system; ~mini spit, many split, minis split, minnie split, mini splint; @each
rooftop unit; rtu, package unit, roof top unit; @each
window unit ac; portable ac; @each
evaporator coil; coil, a coil, evap coil; ~evaporate her coil, evaporator coal; @each
expansion valve; txv, metering device; @each
lineset; line set, suction line, refrigerant line, liquid line; ~line said, lions set, line sat, lion set, lines it, line sit; @each
filter drier; drier; @each
service valve; schrader core; @each
condensate line; condensate drain; ~condense it line, condense ate line, condensate lion; @ft, each
drain pan; condensate pan, secondary pan; @each
float switch; wet switch, pan switch; @each
dryer vent; dryer duct, dryer vent cover; ~drier vent, tire vent, dryer went, dryer bent, drier went; @each
dryer box; dryer vent box; @each
vent hood; wall cap, vent cap, roof cap, soffit vent cap; @each
vent; combustion vent, intake vent; @each
range hood; hood, hood fan, extractor hood, cooker hood; ~range would, range hut, rain should, range who'd; @each
range hood vent; hood duct; @each
makeup air; make up air unit, makeup air damper; @each
hrv; erv, heat recovery ventilator, energy recovery ventilator; @each
radiator; convector, panel radiator; ~radiate her; @each
radiator valve; trv, thermostatic radiator valve; @each
bleed valve; air bleeder, auto vent; @each
hydronic baseboard; fin tube, baseboard radiator; @ft
zone valve; heating zone valve; @each
zone panel; zone controller; @each
radiant tubing; pex radiant; @roll
oil tank; fuel tank; @each
oil filter; oil nozzle; @each
capacitor; run capacitor, start capacitor, dual capacitor; ~capacity her, compassitor, capacity or, a passitor, the pasta tor, cup a sitter; @each
flue; flue pipe, b vent, type b vent; ~flu, flew pipe, flu pipe; @each
vent connector; single wall vent, draft hood; @each
chimney liner; flue liner; @each
concentric vent; @each
dehumidifier; @each
humidifier; whole house humidifier; @each
air mover; air scrubber, negative air machine; @each
uv light; air purifier; @each
curb adapter; roof curb; @each
flex connector duct; canvas connector; @each
turning vane; @each
hanger strap duct; duct strap; @roll
gauge port; manometer port; @each
return air; cold air return, return run, return duct, return vent; @each
supply air; supply run, supply duct, supply vent; @each
stack head; stackhead, register box, wall stack; @each
duct run; duct collar, takeoff collar; @ft, each
blower assembly; fan belt, belt, blower belt; @each
burner; burner assembly, gas burner; @each
zone board; defrost board, defrost control; @each
accumulator; suction accumulator; @each
hard start kit; hard start; @each
unit stand; snow stand, heat pump stand, condenser bracket; @each
indoor unit; cassette, ceiling cassette, wall head, wall unit, branch box, ducted unit, indoor cassette; @each
ptac; through wall unit; @each
window ac; ac, air con, aircon, a c; @each
swamp cooler; evaporative cooler; @each
split unit; dual fuel, condensor unit; @each
heat strip; heat kit, strip heater; @each
aquastat; low water cutoff; @each
air separator; air scoop, air vent valve; @each
baseboard cover; radiator cover, convector cover; @ft, each
air intake; fresh air intake, outside air intake, combustion air, fresh air; @each
vent terminal; vent termination, termination kit; @each
roof exhaust; roof exhaust vent; @each
stovepipe; stove pipe, storm collar, flue collar; @each
thimble; wall thimble; @each
filter media; filter box, filter cabinet; @each
hood insert; hood liner, kitchen exhaust; @each
downdraft; downdraft vent; @each
chiller; cooling tower, vrf; @each
vav box; vav, economizer; @each
damper motor; smoke damper motor; @each`,
  },
];
