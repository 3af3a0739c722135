import type { Sheet } from '../sheet.ts';

/** Household machines. */
export const APPLIANCES: Sheet[] = [
  {
    kind: 'fixture',
    counter: 'appliances',
    lines: `range; stove, cooker, estufa, gas range, electric range; @each
oven; wall oven, double oven; @each
cooktop; hob, induction hob, gas cooktop; ~cook stop; @each
fridge; refrigerator, refri, refrigerador; @each
freezer; chest freezer; @each
ice maker; @each
wine fridge; beverage cooler; @each
dishwasher; ~dish watcher; @each
washer machine; washing machine, clothes washer, lavadora; @each
dryer; clothes dryer, tumble dryer, secadora; @each
stacked laundry; stackable, stacked washer dryer, washer dryer; @each
microwave; over the range microwave; @each
warming drawer; @each
trash compactor; @each
garage door opener; opener; ~garage door open her, garbage door opener; @each
garage remote; @each
central vac; vacuum inlet; @each
gas fireplace; fireplace insert, wood stove, pellet stove, log lighter; @each
bbq; barbecue, outdoor grill; @each
pool heater; pool pump, pool filter; @each
elevator; dumbwaiter, stair lift; @each
range filter; hood filter; @each
anti tip bracket; anti-tip; @each
appliance pull; panel ready front; @each
appliance; kitchen appliance; @each
rangetop; coffee machine; @each
wine cooler; wine chiller, kegerator; @each
ice machine; water dispenser; @each
instant hot; hot water dispenser, instant hot tap; @each
gas log; gas logs, gas insert, gas fire, wood burner, log burner, fireplace unit; @each
treadmill; exercise machine; @each
piano; upright piano; @each
fryer; prep table, steam table, hood system; @each
vending machine; smoker; @each`,
  },
];
