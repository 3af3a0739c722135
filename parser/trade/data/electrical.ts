import type { Sheet } from '../sheet.ts';

/** The electrical counter. */
export const ELECTRICAL: Sheet[] = [
  {
    kind: 'material',
    counter: 'electrical',
    lines: `cable; nm cable, wire, twin and earth, 12/2, 14/2, 10/2, 12/3, 14/3, 10/3, twelve two, fourteen two, twelve three, fourteen three, alambre, cableado, electrical wire, building wire; ~kable; @roll, ft
uf cable; underground feeder, direct burial cable; @roll, ft
mc cable; armored cable, armoured cable, bx, swa, flex cable; ~m c cable; @roll, ft
thhn; stranded wire, thhn wire, single conductor; @roll, ft
service entrance cable; ser cable, se cable, service cable; @ft
ground wire; bare copper, grounding wire, earth wire; ~round wire; @ft
ground rod; earth rod; ~ground rob, round rod, ground rot, ground road; @each
ground clamp; acorn clamp, earth clamp, bonding clamp; @each
bonding jumper; bonding bushing, bonding wire; @each
conduit; pvc conduit, rigid conduit, tubo conduit; ~condo it, can do it, con do it, conduct, con duet, condo eat, conned it; @stick, ft
emt; thinwall conduit; ~e m t, e em tee, e m tea; @stick
flexible conduit; liquid tight, flex conduit, flex whip conduit; @ft
trunking; cable trunking, surface raceway, raceway; @stick
cable tray; ladder tray, basket tray; @stick
emt connector; conduit connector, set screw connector; @each
emt coupling; conduit coupling; @each
conduit elbow; lb fitting, conduit body, pull elbow; @each
conduit strap; pipe strap, one hole strap; @each, bag
conduit clamp; beam clamp, strut clamp; @each
strut; strut channel; ~strutt; @stick
wire nut; wirenut, wire connector, twist on connector; ~wire not, wine nut, why are not, wire knot, wire nights, wire nets, wire notes, wire net, wire nat; @box, each
lever connector; push connector, push in connector, lever nut; @box
connector block; terminal block, choc block, chocolate block; @each
butt splice; crimp connector, ring terminal, spade terminal; @pack
electrical tape; insulating tape, phase tape; @roll
cable staple; wire staple, cable clip; @box
pull string; pull line, fish string, mule tape; @roll
pulling lube; wire lube; @bottle
duct seal; duct putty; @each
anti oxidant paste; antioxidant, aluminum wire paste; @tube
warning tape; underground tape; @roll
wire label; panel label, label tape, wire marker; @each
heat shrink; shrink tube; @pack
fish paper; insulator bushing; @each
heat trace cable; roof heat cable, pipe heat cable, deicing cable; @each
nm; nmb, nm-b, house wire; ~rowe mex, row mex, roam ex, roam x, roman x; @roll, ft
6/3; 8/3, 6/2, 8/2, 14/4, six three, eight three, ten three, ten two, six gauge wire; @ft, roll
three core flex; tps, tps cable, two point five twin and earth; @roll
grounding electrode; grounding electrode conductor, gec, ufer ground, ufer, bare ground; @ft
rigid pipe; rmc, imc, ent; @stick, roll
metal flex; flex tube, flex, fmc, metallic flex, greenfield; @roll, ft
wire loom; split loom, cable wrap, spiral wrap; @ft
cable lube; wire pulling lube; @bottle
colored tape; vinyl tape, rubber tape, splicing tape; @roll
fire barrier foam; fire foam, red foam; @can`,
  },
  {
    kind: 'part',
    counter: 'electrical',
    lines: `outlet; receptacle, plug, socket, duplex, recep, power point, gpo, enchufe, contacto, toma, duplex outlet, wall outlet; ~outlaid, out let, outlit, receptical, recepts, rcpt, rcpts, respectable, wrecked article, recepticle, out late, outlay, recept tickle, perceptible, reception tackle; @each
gfci; gfcis, gfi, gfci outlet, gfci receptacle, ground fault, rcd, gfi outlet, receptacle gfi; ~gf ci, gifs eye, g f c i, gfc eye, jeff ci, g f i, gee fi, g f see eye, gee f see eye, g fci; @each
twenty amp outlet; twenty amp receptacle, 20 amp outlet; @each
usb outlet; usb receptacle; @each
weather resistant outlet; wr outlet, outdoor outlet, exterior outlet; @each
tamper resistant outlet; tr outlet; @each
dryer outlet; dryer receptacle, range outlet, range receptacle, 240 outlet; @each
floor outlet; floor box, floor receptacle; @each
quad outlet; quad receptacle, quad; @each
switched outlet; half hot outlet; @each
switch; light switch, single pole switch, interruptor, apagador, toggle switch, rocker switch, single pole; ~swith, swithc, single pool switch, single poll switch, single bowl switch, like switch, light which, late switch; @each
three way switch; 3 way switch, three-way, two way switch; ~three weigh switch; @each
four way switch; 4 way switch, intermediate switch; @each
smart switch; wifi switch; @each
fan switch; fan control, fan speed control; @each
dimmer; dimmer switch, led dimmer; ~dimer, dinner switch, demur, dimple switch, dim her, dimmer which; @each
breaker; circuit breaker, sp breaker, mcb, single pole breaker; ~braker, brake her, break her, breaking her; @each
afci breaker; arc fault breaker, arc fault, afci; ~ark fault, a f c i, ark fault breaker, arc fought breaker; @each
gfci breaker; rcbo, dual function breaker; @each
double pole breaker; two pole breaker, dp breaker; @each
tandem breaker; twin breaker; @each
main breaker; main switch, main disconnect; @each
panel; electrical panel, breaker panel, consumer unit, load center, switchboard, breaker box, service panel; ~pannel, pan all, pan el, pan ill; @each
sub panel; subpanel; @each
fuse box; fuse board, fuse; @each
panel cover; dead front, panel door; @each
disconnect; ac disconnect, fused disconnect, isolator switch, pull out disconnect; ~this connect; @each
transfer switch; interlock kit, generator inlet; @each
surge protector; whole house surge, spd; @each
junction box; j box, jbox, electrical box, four square box, 4 square box; ~junk in box, jay box, junction boxing, junk shun box, junction bucks; @each
device box; single gang box, two gang box, gang box, back box, pattress, switch box, outlet box, single gang, double gang box; ~devise box; @each
old work box; remodel box, cut in box, dry lining box; @each
new work box; nail on box; @each
box extender; extension ring, box extension; @each
pancake box; @each
ceiling box; octagon box, round box; @each
fan box; fan rated box, fan brace; @each
weatherproof box; bell box, outdoor box; @each
mud ring; plaster ring; ~mud rink, mug ring; @each
cover plate; wall plate, switch plate, outlet cover, face plate, faceplate, plate cover, tapa; ~cover played, wall played, face plait, wall plait; @each
blank cover; blank plate, blank; ~bank cover; @each
in use cover; bubble cover, weatherproof cover; @each
blank filler; filler plate, breaker blank; @each
light fixture; fixture, light, luz, lampara, luminaire; ~light picture, like fixture; @each
pendant; pendant light; ~pendent, penned it, pen dent, penned ant, pending light; @each
sconce; wall sconce, wall light; ~scones, scounce, sconz, skonce, scone, scons, sconse, ascons, sconts; @each
flush mount; flush mount light, ceiling light; @each
chandelier; ~shandelier, chandler here, chandler ear, shandy leer, channel ear; @each
vanity light; bath bar, mirror light; @each
under cabinet light; under cabinet lighting, puck light; @each
track light; track lighting, track head; @each
flood light; security light, motion light; ~blood light; @each
strip light; led strip, led tape, tape light, shop light; @each
landscape light; path light; @each
troffer; led troffer, lay in light, panel light; ~trough er; @each
high bay; high bay light; @each
recessed light; can light, cans, downlight, pot light, high hat, recessed can; ~resist light, recess light, recess lied, reset light, recessed lied; @each
wafer light; canless light, slim light; ~waiver light; @each
retrofit trim; recessed trim, light trim, baffle trim; @each
led driver; transformer, low voltage transformer; @each
ballast; fluorescent ballast; ~ballots, ballest, balist, ball ist, ballistic; @each
bulb; light bulb, led bulb, lamp, foco, led lamp; ~bolb; @each, box
tube light; fluorescent tube, led tube; @each
lamp holder; keyless, porcelain lampholder, keyless fixture; @each
photocell; photo eye, photo sensor, dusk to dawn sensor; @each
ceiling fan; fan; ~sealing fan, ceiling fam, feeling fan, seal in fan; @each
exhaust fan; bath fan, vent fan, bathroom fan, extractor fan, extractor, fan motor; ~exhausted fan; @each
whole house fan; attic fan, gable fan; @each
smoke detector; smoke alarm, smoke, heat detector; ~smoke the tector, smoke a larm; @each
co detector; co alarm, carbon monoxide detector, combo detector; ~seo detector; @each
thermostat; stat, programmable thermostat, line voltage thermostat; ~thermos stat, thermo set, thermal stat, thermo start; @each
doorbell; chime, doorbell button, doorbell transformer; ~door bail, dough bell; @each
timer; timer switch, countdown timer; @each
occupancy sensor; motion sensor, vacancy sensor, pir; @each
meter socket; meter base, meter, meter can; @each
weatherhead; weather head, service head, mast; @each
power cord; cord, appliance cord; @each
dryer cord; three prong cord, four prong cord, range cord; @each
whip; fixture whip, ac whip; @each
pigtail; ~pig tale; @each
cable connector; nm connector, cable clamp, box connector, connectors, connector; @each, bag
grommet; bushing insert, snap bushing; ~gromit, grow met; @each
neutral bar; ground bar, bus bar, neutral lug; ~bust bar; @each
lug; crimp lug; @each
splice; wire splice, splice kit; @each
strobe; horn strobe, speaker strobe, pull station; @each
relay; pilot relay, control relay; @each
contactor; motor starter; ~contact her; @each
emergency light; exit light, exit sign, egress light; @each
power supply; @each
ev charger; car charger, charge point; @each
generator inlet box; inlet box; @each
baseboard heater; wall heater, electric heater; @each
towel warmer; heated towel rail; @each
spur; fused spur, fcu, switched spur; @each
shaver point; shaver socket, cooker point, light point; @each
ceiling rose; batten holder, pendant holder; @each
bulb holder; light socket, lamp base; @each
metal box; plastic box, handy box, nail up box, blue box, four inch square, deep box, quad box, octo box, 1900 box; @each
pancake; pan cake box; @each
fixture box; light box; @each
extender ring; @each
pull box; splice box, handhole, hand hole, pull point; @each
wireway; wire trough, wiring trough, gutter box; @each
drip loop; service conductor, service drop; @each
main board; distribution board, db board; @each
panel schedule; panel directory, circuit directory, panel legend; @each
surge arrester; surge device, surge strip; @each
ground bus; neutral bus, busbar; @each
intersystem bond; intersystem bonding; @each
dimmer pack; led dimmer pack; @each
light fitting; @each
semi flush; semi flush light; @each
wall pack; vapor tight, vapor tight light; @each
gimbal; gimbal trim, eyeball trim; @each
spotlight; spots, gu10, spot light; @each
downrod; fan downrod, fan remote; @each
fixture canopy; fan canopy; @each
globe; glass globe, light globe, light lens, light cover, diffuser lens; @each
fan housing; bath exhaust, fan light combo; @each
smoke co combo; combination detector, heat alarm; @each
bell; buzzer, bell push; @each
sensor; light sensor, daylight sensor, leak sensor, temperature sensor, remote sensor, outdoor sensor, rain sensor, alarm sensor, safety sensor; @each
controls; lighting control, lighting controls; @each
strain relief; cord grip, cord connector; @each
knockout seal; ko seal; @each
conduit hub; weathertight hub; @each
trapeze; trapeze hanger; @each
disconnect box; ac disconnect box; @each
transfer panel; ats, automatic transfer switch, interlock; @each
inverter; solar inverter, combiner box, optimizer, rapid shutdown; @each
solar module; solar panel, solar array; @each
car charging outlet; level two charger, nema 14-50, fourteen fifty, six fifty; @each
charger; battery charger; @each
motor; condenser motor, draft motor, ecm motor, shade motor, garage door motor; @each
variable speed drive; vfd; @each
time clock; astronomic timer; @each`,
  },
];
