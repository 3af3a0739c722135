import type { Sheet } from '../sheet.ts';

/** Who does it, decides it, inspects it, brings it. */
export const ROLES: Sheet[] = [
  {
    kind: 'role',
    lines: `plumber; plumbing crew, plomero, fontanero, plumbing guy, plumbing sub, plumbing contractor; ~plumper, plummer, plum her
electrician; sparky, electricista, electrical crew, spark, electrical sub, electric guy; ~electrish in, electrition
painter; pintor, painting crew, paint crew, paint guy, decorator
tile guy; tiler, tile setter, tile man, tile crew, azulejero; ~title guy, tile guide
drywall crew; drywaller, taper, rocker, drywall guy, mudder, hanger guy, dry liner, tablaroquero
plasterer; yesero, stucco crew, stucco guy
carpenter; chippy, carpintero, joiner
framer; framing crew, framing sub; ~flamer
trim carpenter; finish carpenter, trim guy, trim crew
hvac guy; hvac crew, hvac tech, mechanical guy, ac guy, heating guy, furnace guy, hvac sub, tin knocker, duct guy, mechanical sub
gas fitter; gas engineer, gas guy
boiler guy; boiler tech, chimney sweep
roofer; roofing crew, roof guy, techador
mason; bricklayer, brickie, albañil, mason crew, stone guy; ~maison
concrete crew; concrete guy, finisher, concrete sub, flatwork crew; ~concrete crude
pump operator; pump guy
excavator guy; excavation crew, digging crew, operator; ~excavation crude
asphalt crew; paving crew, paver crew, hardscape crew
floor guy; flooring guy, floor crew, flooring crew, floor installer, floor sander guy; ~flower guy
hardwood guy; hardwood crew
carpet guy; carpet crew, carpet installer
cabinet guy; cabinet installer, cabinet maker, millwork guy; ~cabin it guy
cabinet shop; millwork shop
countertop guy; countertop crew, counter guy, stone fabricator, fabricator, granite guy, template guy, granite crew
glass guy; glazier, glass company, mirror guy, glass shop, vidriero
insulation crew; insulator, insulation guy, spray foam crew; ~insulation crude
window guy; window company, window rep, window crew
door guy; overhead door company, garage door guy
locksmith
landscaper; landscape crew, jardinero, lawn guy
irrigation guy; sprinkler guy
arborist; tree guy, tree crew
fence crew; fence guy
deck crew; deck guy
pool guy; pool company
gutter guy; gutter crew
siding crew; siding guy
sealer crew; sealing crew
waterproofer; foundation guy, waterproofing crew
welder; ironworker, steel guy, soldador, fabrication shop
apprentice; aprendiz, greenhorn; ~a prentice
helper; ayudante, new guy, the kid, the new kid, chalan
laborer; labourer, peon, day laborer
inspector; building inspector, city inspector, the city, inspeccion, building control, building official; ~inspect her
electrical inspector
plumbing inspector
home inspector
fire marshal; fire inspector, fire department
health inspector; health department
owner; client, customer, dueño, dueña, boss lady, patron
landlord; landlady, casero
homeowner; home owner, lady of the house, the lady, lady, la señora, señora, the mrs, the missus, mrs
the husband; the wife, the couple, mister
tenant; lodger, renter, inquilino
neighbor; neighbour, vecino, next door
super; superintendent, building super, site super, general super
property manager; manager, building manager, hoa
maintenance guy; facilities, maintenance, facilities guy
project manager; the pm, pm
foreman; site manager, capataz, mayordomo, lead man; ~four man
the boss; jefe, el jefe, boss
gc; general contractor, general, main contractor, builder, contratista
subcontractor; sub, subs; ~sub contract her
architect; arquitecto; ~arki tech
designer; interior designer, decorator lady, design team
engineer; structural engineer, ingeniero
surveyor; survey crew; ~surveyer
adjuster; insurance adjuster, insurance company, insurance guy; ~a just her, a juster
restoration company; mitigation crew, remediation crew, mold guy, water damage crew
abatement crew; asbestos crew, abatement contractor; ~a bateman crew
lab; the lab, testing lab, hygienist
supplier; supply house, vendor, distributor, merchant, proveedor; ~supply her
lumber yard; lumberyard, the yard, builders merchant
tile shop; tile store
paint store
plumbing supply; electrical supply, hvac supply
the warehouse
rental yard; rental place, tool hire, rental company
ready mix plant; batch plant, ready mix company
delivery guy; delivery driver, driver, delivery crew, courier; ~delivery guide
utility; utility company, utility locator, locator
power company; electric company
gas company
water company; water department, sewer department
low voltage guy; data guy, it guy, av guy, network guy
phone guy; cable guy, internet guy
alarm company; alarm guy, security guy, fire alarm company
sprinkler fitter; sprinkler company, sprinkler contractor
elevator guy; lift engineer
appliance guy; appliance tech, appliance delivery
cleaner; cleaning crew, cleaning lady, janitor, limpieza
demo crew; demo guy, demolition crew
hauler; junk guy, dump guy, waste company
scaffolder; scaffold crew
crane operator; rigger
pest guy; exterminator, termite guy
mover; moving crew
crew; the guys, the boys, night crew, second crew, other crew, la gente, cuadrilla
bookkeeper; office lady, accountant
estimator; sales guy, sales rep
manufacturer; factory rep, rep, tech support
permit office; building department, planning department, permit guy
lender; appraiser
realtor; estate agent, listing agent, real estate agent
stager; photographer
safety guy; safety officer`,
  },
];
