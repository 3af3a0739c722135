import type { Sheet } from '../sheet.ts';

/** Data, phone, sound, alarm: from the electrical counter too. */
export const LOW_VOLTAGE: Sheet[] = [
  {
    kind: 'material',
    counter: 'electrical',
    lines: `cat6 cable; cat 6, cat six cable, cat six, cat6, cat6a; ~cats six, cat sick; @box, ft
cat5e cable; cat 5, cat5e, cat five; @box, ft
network cable; data cable, ethernet cable, ethernet; @box, ft
coax; coax cable, rg6, coaxial; ~coacks, co axe, cokes cable; @box, ft
fiber cable; fiber optic, fibre optic, patch fiber; @ft
speaker wire; speaker cable; @roll, ft
thermostat wire; stat wire, eighteen five, 18/5; @roll, ft
bell wire; doorbell wire; @roll
low voltage wire; landscape wire, alarm cable, fire alarm cable, security wire; @roll, ft
hdmi cable; hdmi; @each
hook and loop tape; hook and loop strap; @roll
plenum cable; riser cable; @box
fiber; fibre, single mode fiber, multimode fiber; @ft
shielded cable; utp, stp, rg59, quad shield; @box, ft
18/2; 16/2, 16/4, 22/4, 22/2, 18/8, eighteen two, sixteen two, sixteen four, twenty two four; @roll, ft
innerduct; orange flex; @roll
cable label; cable labels, wire tie, wire ties, cable management, wire management; @pack`,
  },
  {
    kind: 'part',
    counter: 'electrical',
    lines: `jack; data jack, phone jack, network jack; @each
keystone; keystone jack; ~key stone jacket; @each
rj45; rj45 end, modular plug, rj-45; @bag
coax end; f connector, coax connector; @bag
patch panel; ~pat panel; @each
patch cord; patch cable, patch lead; @each
network switch; poe switch, ethernet switch; @each
router box; wifi router, modem, gateway; @each
access point; wap, wireless access point; ~excess point; @each
rack; network rack, server rack, wall rack; @each
battery backup; @each
camera; security camera, dome camera, bullet camera; @each
video recorder; nvr, dvr; @each
data drop; drop, cable drop; @each
low voltage bracket; low voltage ring, mud bracket, lv bracket; @each
j hook; cable hook; @box
card reader; access reader, key fob reader, prox reader; @each
maglock; magnetic lock, electric strike; @each
door contact; window contact, alarm contact; @each
keypad; alarm keypad; @each
siren; alarm siren; @each
alarm panel; fire panel, facp; @each
duct detector; @each
speaker; ceiling speaker, in wall speaker; @each
subwoofer; amplifier, receiver; @each
tv mount; tv bracket, wall mount, projector mount; @each
projector; projector screen; @each
intercom; door station, video doorbell; ~inter come; @each
volume control; @each
media panel; structured wiring panel, media box; @each
battery pack; backup battery; @each
data point; data port, ethernet port, network port, phone point; @each
tv point; tv box, recessed tv box; @each
antenna; aerial, tv aerial, satellite dish; @each
crimp end; cat6 end, mod ends, crimp ends, compression end, bnc, balun; @bag
splitter; coax splitter, cable splitter; @each
poe injector; power injector, media converter, sfp; @each
mesh unit; wifi extender, extender, repeater, wireless bridge, wifi, wifi ap; @each
demarc; demarc box, cable box, ont, modem box; @each
cctv; camera mount; @each
door phone; video door phone, intercom station; @each
request to exit; exit button, key fob, fob, fob reader, proximity reader, keypad reader, access control; @each
loop detector; magnetic contact, glass break, glass break sensor, motion detector, panic button; @each
alarm system; fire alarm, fire alarm device, annunciator, horn, smoke head; @each
end of line resistor; resistor; @bag
soundbar; amp, audio amp; @each
tv; television, monitor; @each
remote; remote control; @each
smart hub; touchscreen; @each
vac inlet; central vac inlet; @each`,
  },
];
