/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
alone	5
alone area	-18
alone fixture	37
alone material	20
alone part	25
alone word	-16
alone work	-29
apart false	-7
apart true	-34
back 0	45
back 1	51
back 2	7
back 3	-20
back 4	-32
back 5	-22
back 6	-28
back 7	-29
back 8	-27
before another	-67
before more	42
before new	22
before no	27
counted	-15
counted area	-3
counted fixture	3
counted material	-10
counted part	-18
counted surface	-25
counted tool	7
counted word	11
flawed false	31
flawed true	3
goods false false	-61
goods false true	-33
goods true false	64
goods true true	-3
kind area	-23
kind area area	-61
kind area article	12
kind area count	-32
kind area length	-34
kind area pack	-18
kind area pointer	25
kind area volume	-5
kind area weight	-26
kind fixture	-14
kind fixture area	-36
kind fixture article	-10
kind fixture count	-12
kind fixture length	-50
kind fixture pack	-6
kind fixture pointer	-96
kind fixture volume	-34
kind fixture weight	-17
kind material	24
kind material area	82
kind material count	20
kind material length	64
kind material pack	26
kind material pointer	-46
kind material volume	11
kind material weight	52
kind part	9
kind part area	-11
kind part article	3
kind part count	27
kind part length	14
kind part pack	-31
kind part pointer	29
kind part volume	-27
kind part weight	-45
kind surface	-18
kind surface area	-37
kind surface article	-22
kind surface count	-14
kind surface length	-49
kind surface pack	-23
kind surface pointer	28
kind surface volume	7
kind surface weight	-52
kind tool	-5
kind tool article	65
kind tool count	-6
kind tool length	-33
kind tool pack	-27
kind tool pointer	19
kind tool volume	-18
kind word	-19
kind word area	-74
kind word article	-24
kind word count	-21
kind word length	-41
kind word pack	-11
kind word pointer	-8
kind word volume	-33
kind word weight	-30
kind work	-11
kind work article	-17
kind work pack	-19
label	16
like told 1	-6
like told 2	-33
like told 3	-18
modified	100
more area	-43
more fixture	-39
more material	68
more part	26
more surface	-5
more tool	-3
more word	-14
never told false	-5
never told true	-32
not sold so	-34
of -	-10
of about	-47
of above	-6
of after	-35
of along	-21
of around	-14
of at	-40
of behind	-32
of below	-40
of between	-90
of by	-29
of down	-14
of for	-16
of from	-33
of in	-27
of into	-70
of near	-22
of of	12
of off	-25
of on	-35
of out	-20
of over	-39
of past	-33
of through	-21
of to	-29
of under	-27
of up	-15
of with	-11
of without	18
other room	-28
own false	-100
own first area	-28
own first code	77
own first finish	12
own first fixture	28
own first material	43
own first part	63
own first surface	64
own first tool	100
own first word	-16
own goods false	-18
own goods true	42
own head area	-44
own head area count	-56
own head code	65
own head defect	6
own head defect count	6
own head finish	-24
own head finish count	-16
own head finish length	29
own head finish pack	-52
own head finish volume	26
own head fixture count	5
own head fixture pack	-24
own head material	40
own head material area	45
own head material count	42
own head material length	35
own head material pack	40
own head material volume	38
own head material weight	30
own head part	37
own head part count	31
own head part length	82
own head part pack	40
own head surface	41
own head surface count	22
own head surface pack	38
own head tool	70
own head tool count	71
own head word	9
own head word article	-38
own head word count	-16
own head word length	12
own head word pack	65
own head word volume	41
own head word weight	65
own last adhesive	41
own last anchor	62
own last anchors	67
own last base	89
own last blocks	50
own last blue tape	40
own last board	-12
own last boards	81
own last bolt	68
own last bolts	81
own last bonding primer	37
own last bracket	37
own last brackets	20
own last brads	37
own last brushes	74
own last bulbs	28
own last cabinet screws	49
own last cable	-43
own last cap	52
own last casing	39
own last caulk	55
own last ceiling white	62
own last cellulose	45
own last clamps	50
own last color	55
own last construction adhesive	51
own last contractor bags	67
own last couplings	-45
own last cut	-32
own last deck screws	46
own last discs	72
own last door sweep	59
own last doors	-37
own last drip edge	39
own last drywall	35
own last elbow	49
own last elbows	70
own last enamel	52
own last end caps	-29
own last epoxy	42
own last filler	28
own last filters	57
own last flashing tape	32
own last flat	-63
own last flex	-30
own last foam	88
own last foil tape	29
own last gasket	55
own last glue	64
own last gray	59
own last grout	74
own last hangers	65
own last hidden hangers	36
own last hinges	61
own last hose	30
own last kit	71
own last kits	-10
own last knobs	45
own last lacquer	-51
own last lags	74
own last longer	-34
own last mastic	39
own last mesh	43
own last mesh tape	46
own last mortar	45
own last mud	41
own last nail plates	52
own last nails	37
own last old work boxes	60
own last outlets	-53
own last panels	41
own last paste	43
own last pins	52
own last pipe	-33
own last plates	85
own last please	-22
own last plugs	38
own last ply	50
own last poly	52
own last posts	62
own last primer	-13
own last rapid set	31
own last red	9
own last ring	103
own last rods	62
own last roller	52
own last satin	41
own last screw	-14
own last screws	72
own last sealant	46
own last sealer	39
own last self leveler	36
own last shelf pins	35
own last shims	56
own last silicone	48
own last stain	28
own last structural screws	47
own last studs	50
own last supply lines	65
own last tapcons	96
own last tape	55
own last thinset	49
own last tile	47
own last tiles	31
own last toggle bolts	57
own last toggles	43
own last treads	50
own last trim screws	53
own last varnish	39
own last washers	81
own last wax ring	64
own last white	-62
own last wire nuts	44
own last wood filler	45
own last x	84
own of false article	-43
own of false count	17
own of false length	42
own of false pack	-21
own of false pointer	17
own of false volume	13
own of false weight	43
own of true area	64
own of true count	35
own of true length	41
own of true pack	63
own of true volume	59
own of true weight	48
own plural	35
own pointing false	33
own pointing true	-82
own true	34
own unit area	67
own unit article	-43
own unit count	20
own unit length	42
own unit pack	43
own unit pointer	17
own unit volume	47
own unit weight	52
own verb	14
own words 1	26
own words 2	42
own words 3	38
own words 4	86
place -	-26
place here	45
place rest	-26
place subject	-6
plural false area true	-17
plural false article -	-12
plural false count false	-14
plural false count true	-47
plural false length true	-10
plural false pack false	-25
plural false pack true	-16
plural false pointer -	-17
plural false volume false	-9
plural false volume true	-20
plural false weight false	-79
plural false weight true	-57
plural true area true	-35
plural true article -	21
plural true count false	-10
plural true count true	44
plural true length false	-24
plural true length true	-37
plural true pack false	-17
plural true pack true	-8
plural true pointer -	11
plural true volume false	-52
plural true volume true	-5
plural true weight false	49
plural true weight true	53
pointing false	-33
pointing true	82
ran out	45
rank 0	36
rank 0 article	55
rank 0 count	33
rank 0 pointer	61
rank 1	5
rank 1 article	4
rank 1 count	4
rank 1 pointer	46
rank 2	-6
rank 2 article	24
rank 2 count	-7
rank 2 pointer	-33
rank 3	-17
rank 3 article	-37
rank 3 count	-16
rank 3 pointer	-28
rank 4	-19
rank 4 article	-20
rank 4 count	-18
rank 4 pointer	-47
rank 5	-19
rank 5 article	-53
rank 5 count	-17
rank 5 pointer	-47
rank 6	-37
rank 6 article	-65
rank 6 count	-33
rank 6 pointer	-105
said copula	-5
said imperative	-23
said modal	-14
said none	-2
said owed	-10
said past	-5
said present	-9
same unit	6
sentences 0	32
sentences 1	-44
sentences 2	-32
sentences 3	-32
sized	-14
sold so	106
told 1	12
told 1 area	-27
told 1 article	-14
told 1 count	28
told 1 length	-27
told 1 pack	-6
told 1 pointer	-25
told 1 volume	29
told 1 weight	-5
told 2	-31
told 2 article	-96
told 2 count	-32
told 2 length	-18
told 2 pack	-16
told 2 pointer	-75
told 2 volume	-32
told 3	-18
told 3 count	-5
told 3 length	-36
told 3 pack	-3
told 3 pointer	-31
told 3 volume	-49
told before	11
told by false	-4
told by true	9
told here	-52
touches false	40
touches true	7
use buy	-30
use have	4
use use	23
words 1	-28
words 2	4
words 3	16
words 4	11
`;
