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
garage door opener; opener; @each
garage remote; @each
central vac; vacuum inlet; @each
gas fireplace; fireplace insert, wood stove, pellet stove, log lighter; @each
bbq; barbecue, outdoor grill; @each
pool heater; pool pump, pool filter; @each
elevator; dumbwaiter, stair lift; @each
range filter; hood filter; @each
anti tip bracket; anti-tip; @each
appliance pull; panel ready front; @each`,
  },
];
