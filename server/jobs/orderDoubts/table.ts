/** Written by tests/learn/orderDoubts.ts: a sign that a line of the order is still to buy, and hundredths for it. */
export const ORDER_DOUBTS = `
count many	-12
count none	-15
count one	15
days 0	31
days 0 times 1	15
days 0 times 2	13
days 0 times 3	9
days 1	25
days 1 times 1	24
days 2	23
days 2 times 1	24
days 3	-14
days 3 times 2	-8
days 4	-31
days 4 times 1	-29
days 5	-44
days 5 times 1	-54
days 5 times 2	15
head known false	-39
head known true	18
known 0 of 1	-7
known 0 of 2	-18
known 1 of 1	-15
known 1 of 2	8
known 2 of 2	19
known 2 of 3	9
known 3 of 3	15
known 4 of 3	-7
known 5 of 3	-14
notes 0	62
notes 1	21
notes 2	-14
notes 3	-72
notes 4	-20
others 0	-22
others 1	27
rule list/need	11
rule material/need	-12
said 0	-18
said 1	19
sure 5	-45
sure 8	-6
sure 9	40
times 1	-13
times 2	10
unit bag	-8
unit box	-14
unit bucket	-7
unit each	11
unit ft	-6
unit gal	14
unit length	-20
unit null	-15
unit pair	5
unit qt	41
unit roll	7
unit sheet	-7
use false	-27
use true	26
`;
