/** Written by tests/learn/orderDoubts.ts: a sign that a line of the order is still to buy, and hundredths for it. */
export const ORDER_DOUBTS = `
count many	-11
count none	-14
count one	14
days 0	33
days 0 times 1	16
days 0 times 2	13
days 0 times 3	9
days 1	20
days 1 times 1	23
days 1 times 2	-8
days 2	25
days 2 times 1	25
days 3	-13
days 3 times 2	-7
days 4	-30
days 4 times 1	-29
days 5	-44
days 5 times 1	-54
days 5 times 2	15
head known false	-37
head known true	16
known 0 of 1	-8
known 0 of 2	-18
known 1 of 1	-15
known 1 of 2	11
known 2 of 2	17
known 2 of 3	9
known 3 of 3	16
known 4 of 3	-7
known 5 of 3	-14
notes 0	62
notes 1	21
notes 2	-14
notes 3	-72
notes 4	-20
others 0	-22
others 1	28
rule list/need	14
rule material/need	-14
said 0	-20
said 1	19
sized false	-5
sure 5	-44
sure 9	38
times 1	-11
times 2	7
unit bag	-8
unit box	-13
unit bucket	-7
unit each	13
unit ft	-6
unit gal	14
unit length	-20
unit null	-14
unit pair	6
unit qt	41
unit roll	7
unit sheet	-6
use false	-27
use true	25
`;
