/** Written by `tests/learn/naming.ts`: a sign and its weight a line. */
export const FIGURE = `after at part	0.33
after off surface	-0.15
after on word	-0.18
after term defect	-0.15
after term size	0.75
after word surface	-0.20
article a	-0.17
article none	-0.13
article other	-0.16
article the	0.28
behind across here-before	-0.15
behind at -1	-0.33
behind at -2	0.29
behind at -4	-0.24
behind at here-before	0.34
behind by +1	-0.20
behind by -1	-0.41
behind by -2	0.26
behind by -4	-0.24
behind by here-before	0.66
behind deep +1	-0.13
behind deep -1	0.28
behind deep -2	0.20
behind deep -4	-0.12
behind deep here-before	0.23
behind end +1	-0.15
behind end -4	-0.15
behind end here-before	0.24
behind from here-before	0.23
behind in -1	0.15
behind in -3	-0.14
behind in -4	-0.21
behind in here-after	-0.20
behind in here-before	0.40
behind of +1	-0.19
behind of -4	-0.26
behind of here-before	0.48
behind off +1	-0.19
behind off -1	0.30
behind off -2	-0.21
behind off -3	-0.34
behind off -4	-0.20
behind off here-after	-0.13
behind off here-before	0.66
behind on +1	-0.21
behind on -2	0.19
behind on -3	0.35
behind on -4	-0.30
behind on here-after	-0.21
behind over -1	-0.20
behind over -2	-0.12
behind over here-before	0.42
behind quantity -1	0.20
behind short -1	0.12
behind short -3	-0.18
behind short -4	-0.11
behind short here-before	0.43
behind term +1	-0.20
behind term -2	0.15
behind term -3	-0.26
behind term -4	-0.34
behind term here-after	0.19
behind term here-before	0.44
behind to +1	-0.12
behind to -3	-0.29
behind to here-before	0.36
behind wide -1	-0.26
behind wide here-before	0.47
behind with -4	-0.14
behind with here-before	0.29
behind word +1	-0.10
behind word -2	-0.17
behind word -4	-0.14
behind word here-before	0.31
between 	0.25
between about	-0.47
between at	0.42
between be	-0.44
between by	-0.25
between is	0.21
between maybe	-0.11
between say	-0.34
carried	0.33
carried -1 own	0.10
carried -1 pointer	0.45
carried -2 none	-0.22
carried -2 pointer	0.71
carried -3 none	-0.12
carried -3 pointer	0.54
carried -4 none	-0.51
carried -4 own	-0.11
carried -4 pointer	0.29
carried here-before none	0.22
carried here-before own	0.15
carried here-before pointer	0.58
counted percent	0.41
far after 0	0.22
far after 1	-0.21
far after 13+	-0.22
far after 3-4	-0.12
far after 5-7	-0.15
far after 8-12	-0.11
far before 0	0.27
far before 1	0.18
far before 13+	-0.24
far before 3-4	0.17
far before 5-7	0.29
frame copula +1	-0.15
frame copula -1	0.14
frame copula -4	-0.25
frame copula here-after	-0.11
frame copula here-before	0.34
frame imperative +1	-0.37
frame imperative -1	0.47
frame imperative -2	-0.73
frame imperative -4	0.25
frame imperative here-after	-0.19
frame imperative here-before	0.42
frame modal -1	0.38
frame modal -2	0.27
frame modal -4	-0.27
frame modal here-before	-0.17
frame none +1	-0.16
frame none -3	-0.13
frame none -4	-0.14
frame none here-before	0.38
frame owed +1	-0.25
frame owed -1	0.14
frame owed -2	-0.15
frame owed -4	-0.34
frame owed here-before	0.67
frame past +1	-0.16
frame past -1	-0.10
frame past -2	0.19
frame past -3	-0.39
frame past here-after	0.11
frame past here-before	0.40
frame present +1	-0.27
frame present -2	-0.16
frame present -3	0.13
frame present -4	-0.29
frame present here-before	0.39
heading	-0.21
heading +1	-0.21
heading -2	-0.42
heading -3	-0.17
join	-0.15
join +1	-0.13
join +1 finish	-0.11
join +1 tool	-0.12
join -1 fixture	0.10
join -2 defect	-0.10
join -2 fixture	0.23
join -2 work	-0.12
join -3	-0.17
join -3 defect	-0.11
join area	-0.13
join finish+size	-0.26
join fixture+defect	0.16
join fixture+fixture	-0.13
join fixture+tool	-0.12
join fixture+work	-0.13
join leads 	0.11
join leads from	-0.19
join leads of	0.11
join leads on quantity	-0.18
join leads quantity word	-0.13
join leads term by	-0.21
join leads verb quantity	0.16
join leads verb word quantity	0.15
join leads verb word term	-0.10
join leads with	0.23
join leads with quantity	0.16
join leads word quantity	-0.13
join leads word quantity word	-0.11
join leads word verb quantity	0.15
join leads word word	0.13
join links 	0.19
join links at quantity	0.31
join links at word	0.83
join links at word term	-0.21
join links behind	0.77
join links by term verb	0.18
join links by term word	0.11
join links for	0.23
join links mark	0.14
join links of	0.56
join links on quantity	-0.18
join links quantity at	0.25
join links quantity from	-0.40
join links quantity of	0.29
join links quantity on	0.14
join links quantity word	0.12
join links term quantity at	-0.23
join links to	0.24
join links verb	0.14
join links verb off quantity	-0.11
join links verb out	-0.10
join links verb quantity off	0.49
join links verb with	0.17
join links verb word word	0.11
join links with	0.21
join links with quantity	0.20
join links word quantity	-0.31
join links word quantity word	-0.20
join links word term	0.14
join links word verb quantity	0.17
join links word verb word	-0.19
join links word word	0.15
join links word word verb	0.13
join links word word word	-0.14
join material+tells	0.16
join part+surface	0.11
join part+tool	0.16
join same-after	0.24
join same-after area	0.11
join same-after defect	0.15
join same-after material	0.20
join same-after part	0.14
join same-after size	0.18
join same-after surface	0.25
join same-after verbish	0.19
join same-before tells	-0.13
join size	0.13
join size 2	-0.19
join size+area	0.24
join size+defect	-0.13
join size+finish	-0.39
join size+fixture	0.13
join size+part	0.24
join size+tells	-0.14
join sizes 2+1	-0.15
join surface+area	-0.12
join surface+size	-0.11
join surface+tool	-0.10
join tells+fixture	0.29
join tool+surface	-0.14
join verbish+area	0.13
join verbish+material	-0.11
join word+fixture	0.15
join word+tells	-0.10
join work+fixture	-0.11
kind +1 area	-0.17
kind +1 defect	-0.12
kind +1 fixture	-0.11
kind +1 material	-0.14
kind +1 part	-0.22
kind +1 size	-0.13
kind +1 surface	-0.27
kind +1 tool	-0.14
kind +1 word	-0.12
kind -1 area	-0.14
kind -1 finish	-0.58
kind -1 fixture	0.47
kind -1 material	0.27
kind -1 part	0.24
kind -1 surface	0.10
kind -1 verbish	-0.10
kind -1 word	-0.16
kind -2 area	-0.37
kind -2 finish	-0.27
kind -2 fixture	0.32
kind -2 material	0.17
kind -2 part	-0.19
kind -2 size	0.28
kind -2 verbish	-0.19
kind -2 word	-0.12
kind -2 work	-0.24
kind -3 defect	-0.11
kind -3 finish	-0.12
kind -3 part	-0.12
kind -3 size	-0.10
kind -3 surface	-0.23
kind -3 tool	-0.11
kind -4 fixture	-0.19
kind -4 surface	-0.24
kind area	-0.14
kind defect	-0.10
kind finish	-0.20
kind fixture	0.17
kind here-after defect	-0.17
kind here-after finish	-0.11
kind here-after fixture	-0.19
kind here-after size	0.69
kind here-after tells	-0.13
kind here-after verbish	-0.16
kind here-before finish	0.30
kind here-before fixture	0.26
kind here-before material	0.28
kind here-before part	0.76
kind here-before size	0.25
kind here-before surface	0.45
kind here-before tells	-0.34
kind here-before verbish	0.27
kind material	0.16
kind part	0.11
kind size	0.19
kind tells	-0.16
kind word	-0.16
kind work	-0.16
lead a -1	0.23
lead a -2	0.26
lead a -3	-0.34
lead a -4	-0.18
lead about -1	0.17
lead about -2	-0.14
lead about -4	-0.24
lead about here-after	0.28
lead about here-before	0.29
lead at -2	-0.18
lead at -3	-0.16
lead at -4	-0.34
lead at here-before	0.68
lead by -1	-0.20
lead by -2	0.18
lead by -4	-0.21
lead by here-before	0.42
lead defect -1	-0.23
lead defect -2	-0.10
lead defect here-before	0.39
lead fixture here-before	0.37
lead in -1	-0.23
lead in -2	0.34
lead mark -1	-0.18
lead material -2	-0.14
lead material here-before	0.31
lead out -2	-0.56
lead over -1	-0.33
lead over -2	-0.15
lead part here-before	0.30
lead size -1	-0.24
lead size -2	0.13
lead size -4	-0.14
lead size here-after	0.32
lead surface -1	0.21
lead surface -2	-0.15
lead surface -3	-0.12
lead surface here-before	0.18
lead to -4	-0.16
lead to here-before	0.35
lead up -2	-0.17
lead up here-before	0.26
lead verbish -1	0.15
lead verbish -4	-0.11
lead verbish here-after	-0.18
lead verbish here-before	0.39
lead word -1	0.11
lead word -2	0.26
lead word -3	-0.18
lead word -4	-0.22
lead word here-after	-0.15
lead word here-before	0.31
lemma be object	-0.26
lemma be subject	0.26
lemma get object	-0.14
lemma go subject	0.21
lemma have subject	0.24
lemma say subject	-0.30
not-carried	-0.29
not-carried +1 own	-0.12
not-carried +1 pointer	-0.19
not-carried +1 tells	-0.18
not-carried -1 own	-0.20
not-carried -1 pointer	-0.21
not-carried -2 none	-0.35
not-carried -2 own	-0.12
not-carried -2 pointer	-0.47
not-carried -3 pointer	-0.28
not-carried -3 tells	-0.27
not-carried -4 pointer	-0.32
not-carried -4 tells	-0.16
not-carried here-after none	0.20
not-carried here-before none	0.47
not-carried here-before own	0.40
not-carried here-before pointer	0.17
not-carried here-before tells	-0.62
opens-with +1	-0.48
opens-with -1	0.56
opens-with -3	-0.37
opens-with here-after	0.28
part +1 bare	-0.18
part +1 opens	-0.22
part +1 subject	-0.17
part +1 subject-late	-0.14
part -1 bare	-0.25
part -1 object	-0.13
part -1 opens	0.37
part -1 subject	0.35
part -1 subject-late	-0.33
part -2 subject	0.14
part -2 subject-late	-0.13
part -3 bare	-0.29
part -3 opens	0.10
part -3 subject	-0.11
part -3 subject-late	-0.12
part -4 bare	-0.10
part -4 object	-0.13
part -4 subject	-0.16
part -4 subject-late	-0.16
part bare	-0.14
part bare fixture	0.12
part bare material	0.14
part bare part	-0.12
part bare surface	-0.16
part bare tells	-0.13
part bare word	-0.25
part here-before bare	0.46
part here-before object	0.19
part here-before opens	0.32
part here-before subject	0.45
part here-before subject-late	-0.13
part object	-0.19
part object defect	-0.18
part object finish	-0.15
part object size	0.25
part object tells	-0.11
part object tool	-0.17
part object verbish	-0.15
part opens	0.17
part opens area	-0.13
part opens defect	0.33
part opens fixture	0.48
part opens material	0.25
part opens part	0.21
part opens size	0.23
part opens verbish	0.65
part opens word	-0.21
part subject	0.23
part subject area	-0.13
part subject defect	-0.33
part subject fixture	0.26
part subject material	0.23
part subject surface	0.23
part subject tells	-0.18
part subject tool	0.12
part subject verbish	0.25
part subject work	-0.18
part subject-late	-0.20
part subject-late area	-0.29
part subject-late fixture	-0.15
part subject-late material	-0.16
part subject-late part	0.11
part subject-late surface	-0.15
part subject-late tool	-0.17
part subject-late word	-0.16
prep across	-0.11
prep after	-0.52
prep along	-0.11
prep around	-0.17
prep at	-0.17
prep before	-0.32
prep behind	-0.33
prep below	-0.19
prep by	-0.44
prep for	-0.22
prep from	-0.41
prep here-after from	0.19
prep here-after in	-0.13
prep here-after of	-0.28
prep here-before at	-0.23
prep here-before by	-0.66
prep here-before in	-0.23
prep here-before of	0.17
prep here-before on	-0.12
prep here-before to	-0.15
prep in	-0.16
prep into	-0.11
prep of	-0.23
prep off	-0.16
prep other after	-0.50
prep other around	-0.17
prep other at	-0.19
prep other before	-0.20
prep other behind	-0.28
prep other by	-0.30
prep other for	-0.19
prep other from	-0.24
prep other in	-0.13
prep other into	0.10
prep other of	-0.28
prep other off	-0.26
prep other out	-0.23
prep other to	-0.25
prep other under	-0.11
prep other up	0.33
prep other with	-0.17
prep out	-0.35
prep to	-0.24
prep toward	-0.40
prep under	-0.16
prep up	-0.10
prep with	-0.21
rank after 1	-0.10
rank after 2	-0.18
rank after 3	-0.12
rank after 4	-0.14
rank before 0	0.21
rank before 1	0.19
rank before 4	-0.25
says modal	-0.11
says past	-0.15
sentences -1	-0.39
sentences -1 bare	-0.20
sentences -1 opens	-0.39
sentences -1 subject	-0.30
sentences -1 subject-late	-0.15
sentences -2	-0.21
sentences -2 subject	-0.23
sentences 1	-0.16
sentences 1 bare	-0.16
sentences 1 opens	-0.18
sentences 1 subject	-0.22
sentences 1 subject-late	-0.11
size 1	-0.17
size 3	0.38
stands-off-after	-0.19
subject none +1	-0.15
subject none -2	-0.16
subject none -3	-0.15
subject none here-after	0.16
subject none here-before	0.43
subject own +1	-0.13
subject own -1	-0.21
subject own -4	-0.13
subject own here-after	-0.11
subject own here-before	0.45
subject person +1	-0.16
subject person -1	0.50
subject person -2	-0.40
subject person -3	-0.14
subject person -4	-0.26
subject person here-before	0.10
subject pointer +1	-0.30
subject pointer -1	0.31
subject pointer -2	0.24
subject pointer -4	-0.33
subject pointer here-after	-0.24
subject pointer here-before	0.31
subject tells +1	-0.19
subject tells -2	0.26
subject tells -3	-0.27
subject tells -4	-0.19
subject tells here-before	-0.51
touches-after	0.24
touches-before	0.25
unit area material	0.59
unit area word	-0.64
unit length area	-0.15
unit length finish	-0.25
unit length fixture	0.15
unit length size	0.13
unit length tool	-0.11
unit none area	-0.10
unit none defect	-0.17
unit none fixture	0.17
unit none material	0.41
unit none part	0.29
unit none size	0.12
unit none tells	-0.33
unit none tool	-0.13
unit none word	-0.34
unit percent area	0.14
unit percent fixture	0.18
unit percent size	0.19
unit percent surface	0.52
unit percent tells	-0.41
unit percent word	-0.51
unit temperature area	0.13
unit temperature defect	-0.19
use buy	-0.26
use have	-0.16
use need	-0.10
use say	0.22
use see	0.43
use work	-0.11
where +1	-0.17
where -4	-0.18
where here-before	0.37
whole after at part	0.55
whole after of material	0.56
whole after off surface	-0.12
whole after on word	-0.27
whole after term defect	0.14
whole after term size	0.21
whole after term surface	0.20
whole after word material	-0.14
whole after word surface	-0.29
whole after word word	-0.17
whole article none	-0.23
whole behind across here-before	0.55
whole behind at -1	-0.36
whole behind at -3	-0.17
whole behind at -4	-0.15
whole behind at here-after	0.33
whole behind at here-before	0.27
whole behind by +1	-0.17
whole behind by -1	-0.22
whole behind by -2	0.82
whole behind by -3	-0.18
whole behind by -4	-0.20
whole behind by here-before	0.36
whole behind deep +1	-0.14
whole behind deep -2	-0.24
whole behind deep -4	-0.14
whole behind deep here-before	-0.12
whole behind end +1	-0.15
whole behind end here-before	0.14
whole behind from here-after	0.35
whole behind from here-before	0.20
whole behind in -4	-0.11
whole behind in here-before	0.35
whole behind of -1	-0.42
whole behind of -4	-0.17
whole behind of here-after	0.42
whole behind off +1	-0.12
whole behind off -3	-0.16
whole behind off -4	-0.10
whole behind off here-before	0.17
whole behind on +1	-0.13
whole behind on -1	-0.28
whole behind on -2	-0.51
whole behind on -4	-0.18
whole behind on here-before	-0.26
whole behind over -1	-0.15
whole behind over -2	-0.10
whole behind over here-before	0.31
whole behind short +1	-0.18
whole behind short -1	-0.27
whole behind short -3	-0.16
whole behind short -4	-0.21
whole behind term +1	-0.18
whole behind term -2	0.24
whole behind term -3	-0.15
whole behind term -4	-0.24
whole behind term here-after	0.34
whole behind term here-before	0.35
whole behind to -3	-0.14
whole behind to here-after	0.30
whole behind to here-before	-0.19
whole behind wide -1	-0.19
whole behind wide here-before	0.17
whole behind with -1	0.36
whole behind with -4	-0.16
whole behind word +1	-0.18
whole behind word -3	-0.13
whole behind word -4	-0.23
whole behind word here-after	-0.21
whole behind word here-before	0.10
whole between 	0.11
whole between about	0.37
whole between at	0.12
whole between be	0.24
whole between by	0.13
whole between is	0.11
whole between maybe	0.38
whole carried	0.27
whole carried -1 own	0.50
whole carried -1 pointer	0.18
whole carried -2 none	0.53
whole carried -2 own	0.63
whole carried -2 pointer	0.29
whole carried -3 none	-0.31
whole carried -3 pointer	-0.15
whole carried -4 none	-0.19
whole carried here-before own	0.14
whole carried here-before pointer	0.52
whole counted current	-0.12
whole counted length	-0.13
whole counted pack	-0.13
whole counted percent	0.57
whole far after 0	0.17
whole far after 1	-0.13
whole far after 13+	-0.18
whole far after 2	0.10
whole far after 3-4	-0.11
whole far after 5-7	-0.14
whole far after 8-12	-0.13
whole far before 1	0.14
whole far before 13+	-0.29
whole far before 2	0.11
whole far before 3-4	0.16
whole frame copula +1	-0.16
whole frame copula -3	-0.12
whole frame copula -4	-0.16
whole frame copula here-before	0.28
whole frame imperative +1	-0.11
whole frame imperative -2	-0.49
whole frame imperative -4	0.31
whole frame imperative here-before	0.13
whole frame modal -1	0.48
whole frame modal -2	-0.17
whole frame modal -4	-0.20
whole frame modal here-after	0.23
whole frame modal here-before	0.28
whole frame none +1	-0.19
whole frame none -2	0.15
whole frame none -3	-0.10
whole frame none -4	-0.24
whole frame owed -1	0.18
whole frame owed -2	-0.11
whole frame owed -3	-0.13
whole frame owed -4	-0.16
whole frame owed here-after	-0.11
whole frame owed here-before	0.47
whole frame past +1	-0.16
whole frame past -1	-0.15
whole frame past -2	-0.15
whole frame past -3	-0.25
whole frame past -4	-0.15
whole frame past here-after	0.21
whole frame past here-before	0.34
whole frame present +1	-0.19
whole frame present -1	0.29
whole frame present -4	-0.22
whole frame present here-after	0.31
whole frame present here-before	0.19
whole heading +1	-0.16
whole heading -2	-0.40
whole heading -3	0.43
whole heading -4	-0.14
whole kind +1 area	-0.11
whole kind +1 defect	-0.25
whole kind +1 material	-0.13
whole kind +1 part	-0.16
whole kind +1 surface	-0.14
whole kind +1 tool	-0.11
whole kind +1 word	-0.12
whole kind -1 area	0.30
whole kind -1 finish	-0.27
whole kind -1 part	0.20
whole kind -1 surface	-0.10
whole kind -1 tells	-0.15
whole kind -1 tool	0.22
whole kind -1 verbish	-0.24
whole kind -1 word	-0.10
whole kind -2 area	-0.35
whole kind -2 finish	-0.14
whole kind -2 fixture	0.86
whole kind -2 size	-0.18
whole kind -2 tool	-0.10
whole kind -2 verbish	-0.15
whole kind -2 word	-0.15
whole kind -2 work	-0.20
whole kind -3 area	0.18
whole kind -3 defect	-0.19
whole kind -3 fixture	-0.17
whole kind -3 material	-0.12
whole kind -3 part	-0.15
whole kind -3 size	-0.10
whole kind -3 tool	-0.13
whole kind -3 verbish	-0.14
whole kind -4 defect	-0.12
whole kind -4 part	-0.12
whole kind -4 surface	-0.15
whole kind -4 verbish	-0.10
whole kind finish	-0.19
whole kind fixture	0.15
whole kind here-after defect	-0.11
whole kind here-after finish	-0.20
whole kind here-after fixture	-0.20
whole kind here-after material	0.61
whole kind here-after part	0.62
whole kind here-after surface	0.41
whole kind here-after tells	-0.17
whole kind here-after verbish	0.24
whole kind here-after word	-0.22
whole kind here-before area	-0.30
whole kind here-before defect	0.72
whole kind here-before surface	0.18
whole kind here-before tells	0.16
whole kind here-before verbish	0.30
whole kind here-before word	0.24
whole kind tool	-0.11
whole kind word	-0.14
whole kind work	-0.17
whole lead a -1	0.19
whole lead a -2	0.64
whole lead a -3	-0.22
whole lead a -4	-0.16
whole lead about -3	-0.15
whole lead about -4	-0.20
whole lead about here-before	0.38
whole lead at -1	0.11
whole lead at -2	-0.38
whole lead at -3	-0.10
whole lead at -4	-0.26
whole lead at here-before	0.35
whole lead by -2	0.56
whole lead by -3	-0.13
whole lead by -4	-0.17
whole lead defect -1	-0.29
whole lead defect -2	-0.16
whole lead defect -3	-0.13
whole lead defect here-after	0.52
whole lead defect here-before	0.39
whole lead fixture here-before	0.33
whole lead in -1	-0.17
whole lead in -2	-0.12
whole lead mark -1	-0.16
whole lead material -2	-0.11
whole lead material -3	0.24
whole lead material -4	-0.12
whole lead material here-after	0.39
whole lead out -1	-0.22
whole lead over -2	-0.18
whole lead over here-before	0.37
whole lead part -4	-0.11
whole lead size -1	-0.23
whole lead size -3	0.25
whole lead size here-after	0.13
whole lead size here-before	-0.11
whole lead surface -1	-0.22
whole lead surface -2	-0.20
whole lead surface -3	-0.23
whole lead surface -4	-0.13
whole lead surface here-before	0.24
whole lead to -1	-0.18
whole lead to -3	-0.11
whole lead to -4	-0.19
whole lead to here-before	0.39
whole lead up here-before	0.26
whole lead verbish -1	0.24
whole lead verbish -3	-0.23
whole lead verbish -4	-0.11
whole lead verbish here-after	0.30
whole lead verbish here-before	0.16
whole lead word -3	-0.21
whole lead word -4	-0.14
whole lead word here-after	0.15
whole lead word here-before	0.22
whole lemma be subject-late	0.36
whole lemma get object	0.39
whole lemma go object	-0.11
whole lemma have object	0.54
whole lemma sit object	0.20
whole lemma want object	-0.17
whole not-carried	-0.31
whole not-carried +1 none	-0.11
whole not-carried +1 own	-0.12
whole not-carried +1 pointer	-0.15
whole not-carried +1 tells	-0.13
whole not-carried -1 none	-0.16
whole not-carried -1 own	-0.29
whole not-carried -2 none	-0.31
whole not-carried -2 own	-0.25
whole not-carried -2 pointer	-0.38
whole not-carried -3 own	-0.14
whole not-carried -3 pointer	-0.16
whole not-carried -3 tells	-0.22
whole not-carried -4 none	-0.16
whole not-carried -4 pointer	-0.17
whole not-carried -4 tells	-0.14
whole not-carried here-after none	0.37
whole not-carried here-after pointer	0.44
whole not-carried here-before own	0.21
whole not-carried here-before pointer	0.18
whole opens-with +1	-0.17
whole opens-with -2	0.35
whole opens-with -3	-0.20
whole opens-with -4	-0.19
whole opens-with here-after	0.23
whole part +1 bare	-0.16
whole part +1 object	-0.11
whole part +1 opens	-0.20
whole part +1 subject	-0.11
whole part +1 subject-late	-0.12
whole part -1 bare	0.11
whole part -1 opens	-0.10
whole part -1 subject-late	-0.11
whole part -2 subject-late	0.25
whole part -3 bare	-0.18
whole part -3 object	-0.13
whole part -3 subject	-0.10
whole part -3 subject-late	-0.18
whole part -4 object	-0.16
whole part -4 opens	-0.15
whole part -4 subject	-0.11
whole part -4 subject-late	0.10
whole part bare area	0.41
whole part bare fixture	0.17
whole part bare material	-0.20
whole part bare size	0.34
whole part bare surface	0.17
whole part bare tells	-0.25
whole part bare verbish	0.29
whole part bare word	-0.25
whole part here-after subject-late	0.46
whole part here-before object	0.48
whole part here-before subject-late	0.46
whole part object area	-0.12
whole part object finish	-0.17
whole part object size	-0.12
whole part object tool	-0.19
whole part opens	-0.13
whole part opens area	0.25
whole part opens defect	-0.14
whole part opens finish	-0.11
whole part opens fixture	0.29
whole part opens material	-0.16
whole part opens size	-0.21
whole part opens verbish	-0.25
whole part opens word	-0.16
whole part opens work	-0.19
whole part subject area	-0.20
whole part subject defect	-0.21
whole part subject tool	0.17
whole part subject-late	0.17
whole part subject-late area	-0.32
whole part subject-late fixture	0.41
whole part subject-late material	0.34
whole part subject-late part	0.31
whole part subject-late surface	0.17
whole part subject-late verbish	0.51
whole prep above	0.26
whole prep after	-0.19
whole prep along	0.44
whole prep at	-0.17
whole prep before	-0.20
whole prep behind	0.41
whole prep below	0.50
whole prep by	-0.33
whole prep for	0.12
whole prep here-after above	0.31
whole prep here-after at	0.29
whole prep here-after from	0.22
whole prep here-after in	-0.26
whole prep here-after off	0.35
whole prep here-after on	0.16
whole prep here-after to	-0.21
whole prep here-before at	-0.44
whole prep here-before by	-0.29
whole prep here-before in	0.18
whole prep here-before on	-0.15
whole prep in	-0.13
whole prep into	0.23
whole prep other at	-0.19
whole prep other before	-0.13
whole prep other behind	-0.20
whole prep other by	-0.28
whole prep other for	0.24
whole prep other from	-0.23
whole prep other in	-0.16
whole prep other into	0.23
whole prep other off	-0.29
whole prep other out	-0.15
whole prep other over	-0.24
whole prep other under	-0.14
whole prep out	-0.26
whole prep over	-0.18
whole prep toward	-0.62
whole prep with	-0.10
whole rank after 2	-0.11
whole rank after 4	-0.17
whole rank before 0	0.14
whole rank before 3	-0.12
whole rank before 4	-0.21
whole says none	-0.13
whole sentences -1	-0.33
whole sentences -1 bare	-0.19
whole sentences -1 object	-0.20
whole sentences -1 opens	-0.22
whole sentences -1 subject	-0.15
whole sentences -1 subject-late	-0.27
whole sentences -2	-0.23
whole sentences -2 bare	-0.17
whole sentences -2 object	-0.13
whole sentences -2 subject	-0.17
whole sentences -2 subject-late	-0.16
whole sentences 1	-0.20
whole sentences 1 bare	-0.17
whole sentences 1 opens	-0.20
whole sentences 1 subject	-0.16
whole size 2	-0.11
whole subject none +1	-0.18
whole subject none -1	-0.13
whole subject none -3	-0.11
whole subject none -4	-0.15
whole subject none here-after	0.11
whole subject own +1	-0.15
whole subject own -2	-0.17
whole subject own -3	-0.13
whole subject own -4	-0.10
whole subject own here-before	0.22
whole subject person -1	0.43
whole subject person -2	-0.13
whole subject person -4	-0.24
whole subject person here-before	0.30
whole subject pointer +1	-0.18
whole subject pointer -2	0.16
whole subject pointer -3	-0.15
whole subject pointer -4	-0.25
whole subject pointer here-after	0.22
whole subject pointer here-before	0.35
whole subject tells +1	-0.13
whole subject tells -2	0.26
whole subject tells -3	-0.22
whole subject tells -4	-0.18
whole touches-after	0.18
whole touches-before	0.13
whole unit area material	0.24
whole unit area word	-0.24
whole unit length defect	0.15
whole unit length finish	-0.22
whole unit length fixture	0.17
whole unit length size	-0.11
whole unit length tells	-0.15
whole unit length tool	-0.20
whole unit length verbish	-0.11
whole unit length word	-0.13
whole unit length work	-0.17
whole unit none defect	-0.19
whole unit none material	-0.13
whole unit none surface	0.10
whole unit none tells	0.13
whole unit none verbish	0.20
whole unit none word	-0.11
whole unit percent area	-0.19
whole unit percent defect	-0.30
whole unit percent material	-0.17
whole unit percent size	-0.12
whole unit pressure word	-0.42
whole unit temperature area	-0.25
whole unit temperature defect	-0.14
whole unit temperature word	-0.23
whole unit voltage word	-0.14
whole use have	0.13
whole use measure	-0.12
whole use need	-0.16
whole use other	-0.10
whole use use	-0.17
whole where +1	-0.15
whole where -3	-0.14
whole where -4	-0.16
whole where here-before	0.20`;

export const FLAW = `after at defect	-0.56
after at fixture	0.20
after at material	0.39
after at word	-0.46
after by defect	-0.22
after end defect	-0.30
after for defect	-0.11
after in defect	-0.22
after in material	0.35
after in word	0.34
after on defect	-0.57
after on material	0.87
after on surface	0.69
after on word	-0.21
after quantity defect	-0.42
after quantity fixture	0.25
after quantity material	0.56
after quantity part	0.27
after quantity surface	0.80
after quantity verbish	-0.21
after quantity word	-0.32
after term area	0.15
after term fixture	0.57
after term part	0.40
after word area	0.12
after word defect	-0.27
after word fixture	0.14
after word material	0.50
after word part	0.21
after word surface	0.32
after word verbish	-0.23
article a	-0.26
article none	-0.17
article other	-0.20
article the	0.42
behind about here-after	-0.16
behind about here-before	0.58
behind at +1	-0.17
behind at -2	-0.48
behind at -3	-0.20
behind at -4	-0.27
behind at here-after	0.12
behind at here-before	0.81
behind by -2	-0.35
behind by here-after	0.59
behind down +1	-0.27
behind down here-after	0.50
behind end +1	-0.18
behind end -1	0.26
behind end -2	-0.18
behind end -4	-0.14
behind end here-after	-0.30
behind end here-before	0.30
behind for here-after	-0.60
behind from +1	-0.43
behind from -1	0.11
behind from -2	-0.22
behind from -4	-0.11
behind from here-before	0.52
behind in +1	-0.32
behind in -1	0.10
behind in -2	-0.15
behind in -3	-0.12
behind in -4	-0.13
behind in here-after	0.22
behind in here-before	0.11
behind mark -1	-0.32
behind mark -2	0.31
behind mark here-after	-0.20
behind mark here-before	0.46
behind off -1	-0.44
behind off -3	-0.34
behind off here-after	0.51
behind off here-before	0.53
behind on +1	-0.21
behind on -1	-0.28
behind on -2	-0.15
behind on -4	-0.20
behind on here-after	0.39
behind on here-before	0.21
behind out +1	-0.12
behind out -2	0.15
behind out -4	-0.23
behind out here-after	-0.10
behind out here-before	0.56
behind quantity -1	-0.23
behind quantity -2	0.21
behind quantity -3	-0.24
behind quantity -4	-0.44
behind quantity here-after	0.37
behind quantity here-before	0.31
behind term +1	-0.20
behind term -1	-0.30
behind term -3	-0.27
behind term -4	-0.22
behind term here-after	0.43
behind term here-before	0.68
behind up -1	-0.12
behind up here-before	0.10
behind word +1	-0.19
behind word -4	-0.15
behind word here-after	0.19
behind word here-before	0.14
behind-verb	-0.10
between 	0.34
between are	0.44
between be	0.17
between is	0.22
counted bare	0.13
counted pressure	-0.41
far after 1	0.32
far after 13+	-0.18
far after 5-7	-0.13
far after 8-12	-0.17
far before 0	0.35
far before 13+	-0.32
far before 2	0.30
far before 3-4	0.32
far before 5-7	-0.12
frame copula -4	-0.19
frame copula here-before	0.21
frame imperative +1	0.40
frame imperative -1	-0.27
frame imperative -2	0.22
frame imperative -3	-0.36
frame imperative -4	-0.34
frame imperative here-after	-0.36
frame imperative here-before	0.79
frame modal -1	-0.36
frame modal -2	-0.28
frame modal -3	-0.22
frame modal -4	-0.34
frame modal here-after	0.72
frame modal here-before	0.21
frame none +1	-0.30
frame none -2	-0.16
frame none -4	-0.10
frame none here-after	0.21
frame none here-before	0.42
frame owed +1	-0.22
frame owed -1	-0.62
frame owed -2	-0.42
frame owed -3	-0.34
frame owed -4	-0.33
frame owed here-after	0.59
frame owed here-before	0.78
frame past +1	-0.21
frame past -1	-0.11
frame past -4	-0.30
frame past here-after	0.28
frame past here-before	0.44
frame present +1	-0.40
frame present -1	0.38
frame present -4	-0.27
frame present here-before	0.29
heading +1	-0.24
heading -1	-0.30
heading -2	0.65
heading -3	0.14
heading here-after	-0.39
heading here-before	0.28
join	-0.36
join +1	-0.17
join -2 fixture	0.11
join -3	-0.21
join -3 part	-0.11
join defect	-0.21
join defect+fixture	-0.11
join finish	-0.10
join fixture+fixture	0.25
join leads at word	0.14
join leads at word verb	-0.10
join leads for	0.12
join leads for word	0.14
join leads on term verb	0.11
join leads quantity of	-0.23
join leads quantity of word	0.13
join leads verb off	0.20
join leads verb with	0.39
join links along	-0.11
join links at word	0.22
join links behind	0.65
join links by	0.36
join links for	0.38
join links in	0.10
join links into word at	0.14
join links of	0.13
join links on term verb	0.60
join links out of	0.11
join links over	0.24
join links quantity	0.15
join links quantity at	-0.19
join links quantity from	-0.17
join links quantity mark	-0.21
join links quantity of word	0.12
join links verb at	-0.13
join links verb in	-0.10
join links verb mark	0.56
join links verb off	0.14
join links verb on	-0.14
join links verb verb out	-0.21
join links verb with	0.13
join links verb word word	-0.10
join links word quantity word	-0.12
join links word verb at	-0.16
join links word verb in	0.11
join links word verb quantity	-0.17
join links word verb word	0.10
join links word word word	0.30
join material	-0.13
join part	-0.14
join same-after fixture	0.33
join same-after tells	-0.12
join size 2	-0.28
join size 3	-0.20
join size+finish	-0.18
join size+part	0.17
join size+verbish	0.15
join sizes 1+2	-0.15
join sizes 2+1	-0.24
join sizes 3+1	-0.14
join sizes 3+2	-0.11
join surface+fixture	0.20
join surface+surface	0.16
join tells+fixture	0.11
join tool+size	0.10
join tool+tool	-0.11
join tool+verbish	0.35
join work	-0.11
kind +1 area	-0.22
kind +1 defect	-0.11
kind +1 finish	-0.13
kind +1 material	-0.19
kind +1 part	-0.15
kind +1 size	-0.20
kind +1 surface	-0.15
kind +1 tool	-0.10
kind +1 verbish	-0.22
kind +1 word	-0.15
kind -1 defect	-0.26
kind -1 finish	-0.29
kind -1 fixture	0.40
kind -1 part	0.25
kind -1 surface	0.32
kind -1 tells	-0.38
kind -1 tool	0.13
kind -1 word	-0.14
kind -2 finish	-0.26
kind -2 size	-0.30
kind -2 tells	0.57
kind -2 tool	-0.44
kind -2 verbish	-0.12
kind -2 word	-0.16
kind -2 work	-0.27
kind -3 fixture	0.30
kind -3 material	-0.19
kind -3 part	-0.21
kind -3 size	-0.32
kind -3 surface	-0.25
kind -3 tool	-0.17
kind -4 area	-0.16
kind -4 part	-0.22
kind -4 size	-0.10
kind -4 surface	-0.15
kind -4 tool	-0.22
kind defect	-0.18
kind finish	-0.20
kind fixture	0.23
kind here-after area	0.41
kind here-after defect	-0.40
kind here-after finish	0.13
kind here-after fixture	0.20
kind here-after material	0.53
kind here-after part	0.47
kind here-after size	0.58
kind here-after surface	0.51
kind here-before defect	0.24
kind here-before fixture	0.16
kind here-before material	0.48
kind here-before part	0.73
kind here-before size	0.61
kind here-before surface	0.35
kind here-before tool	0.55
kind here-before verbish	-0.36
kind here-before word	-0.22
kind part	0.21
kind surface	0.15
kind tells	-0.15
kind verbish	-0.12
kind word	-0.20
lead a -2	-0.43
lead a -3	-0.28
lead a -4	-0.28
lead a here-after	0.58
lead a here-before	0.41
lead area -1	-0.33
lead area -2	0.37
lead area -3	-0.10
lead area -4	-0.15
lead area here-after	0.52
lead area here-before	-0.29
lead fixture -1	-0.18
lead fixture -2	-0.14
lead fixture -3	-0.10
lead fixture -4	-0.12
lead fixture here-after	-0.32
lead fixture here-before	0.60
lead material -1	0.18
lead material -2	-0.16
lead material -3	-0.13
lead material -4	-0.11
lead material here-after	-0.39
lead material here-before	0.42
lead part -1	-0.12
lead part -2	-0.14
lead part -3	-0.18
lead part -4	-0.14
lead part here-after	-0.30
lead part here-before	0.57
lead quantity -1	0.39
lead quantity -3	-0.12
lead quantity -4	-0.42
lead quantity here-after	-0.17
lead quantity here-before	0.76
lead size -1	-0.51
lead size here-after	0.31
lead size here-before	0.15
lead surface -1	0.26
lead surface -2	-0.15
lead surface -3	-0.13
lead surface here-after	-0.29
lead surface here-before	0.20
lead the -2	-0.45
lead the -4	-0.31
lead the here-after	0.72
lead verbish -1	0.23
lead verbish -2	-0.47
lead verbish -3	0.32
lead verbish here-after	-0.15
lead verbish here-before	0.24
lead word -1	0.22
lead word -2	0.26
lead word -3	-0.17
lead word -4	-0.24
lead word here-before	0.24
lemma be object	-0.31
lemma be subject	0.46
lemma go object	0.28
lemma go subject	0.22
lemma have object	-0.16
lemma have subject	0.48
lemma leave object	0.35
lemma say object	1.17
lemma sit object	-0.15
opens-with +1	-0.14
opens-with -1	-0.20
opens-with -2	-0.19
opens-with -4	-0.20
opens-with here-after	0.51
part +1 bare	-0.15
part +1 object	-0.21
part +1 opens	-0.30
part +1 subject-late	-0.14
part -1 opens	0.10
part -1 subject	0.15
part -1 subject-late	-0.29
part -2 bare	-0.31
part -2 opens	0.20
part -3 bare	0.14
part -3 object	-0.17
part -3 subject-late	-0.19
part -4 object	-0.18
part -4 opens	-0.12
part -4 subject-late	-0.22
part bare	-0.15
part bare defect	-0.29
part bare finish	0.41
part bare material	-0.14
part bare part	0.21
part bare size	0.12
part bare word	-0.26
part here-after bare	-0.15
part here-after opens	0.53
part here-after subject	0.70
part here-after subject-late	0.14
part here-before object	0.22
part here-before opens	0.48
part here-before subject	0.32
part object	-0.19
part object defect	-0.18
part object finish	-0.33
part object fixture	0.13
part object part	0.30
part object tells	-0.21
part object tool	-0.29
part object verbish	-0.12
part object word	-0.14
part opens	0.21
part opens fixture	0.62
part opens material	0.33
part opens part	0.16
part opens size	0.15
part opens surface	-0.13
part opens tells	0.31
part opens tool	-0.44
part opens verbish	0.25
part opens work	0.20
part subject	0.19
part subject area	0.38
part subject defect	-0.21
part subject fixture	0.25
part subject material	0.21
part subject size	-0.18
part subject surface	0.31
part subject tells	-0.42
part subject tool	0.71
part subject verbish	-0.25
part subject word	-0.11
part subject-late area	-0.33
part subject-late fixture	-0.28
part subject-late material	0.33
part subject-late part	-0.15
part subject-late size	0.42
part subject-late verbish	-0.14
part subject-late word	-0.12
prep above	0.32
prep across	-0.29
prep after	-0.17
prep along	0.45
prep around	0.52
prep at	-0.17
prep before	-0.31
prep behind	-0.17
prep below	-0.58
prep by	-0.38
prep down	0.18
prep for	-0.21
prep from	-0.25
prep here-after at	-0.11
prep here-after behind	-0.21
prep here-after from	-0.33
prep here-after in	0.33
prep here-after of	-0.38
prep here-after off	0.46
prep here-after on	0.18
prep here-after over	-0.25
prep here-after to	-0.40
prep here-after with	-0.31
prep here-before by	-0.96
prep here-before in	-0.71
prep here-before of	0.20
prep here-before on	-0.43
prep in	-0.13
prep into	-0.13
prep of	-0.16
prep off	-0.12
prep on	-0.16
prep other after	-0.17
prep other along	0.30
prep other at	-0.21
prep other before	-0.24
prep other by	-0.20
prep other for	-0.27
prep other from	-0.26
prep other in	-0.18
prep other of	-0.17
prep other off	-0.14
prep other on	-0.21
prep other out	-0.17
prep other over	-0.11
prep other to	-0.18
prep other up	-0.18
prep other with	-0.18
prep out	-0.49
prep over	-0.50
prep to	-0.20
prep toward	-0.62
prep under	-0.25
prep with	-0.12
prep without	-0.34
rank after 2	-0.15
rank after 3	-0.20
rank before 0	0.25
rank before 2	-0.12
rank before 3	-0.12
rank before 4	-0.17
says imperative	0.11
sentences -1	-0.41
sentences -1 bare	-0.22
sentences -1 object	-0.18
sentences -1 opens	-0.19
sentences -1 subject	-0.36
sentences -1 subject-late	-0.22
sentences -2	-0.20
sentences -2 bare	-0.10
sentences -2 opens	-0.16
sentences -2 subject-late	-0.13
sentences 1	-0.32
sentences 1 bare	-0.37
sentences 1 object	-0.13
sentences 1 opens	-0.44
sentences 1 subject	-0.16
size 1	-0.29
size 2	0.19
size 3	0.42
stands-off-after	0.11
subject none +1	-0.29
subject none -2	-0.11
subject none -4	-0.16
subject none here-after	0.17
subject none here-before	0.48
subject own -4	-0.17
subject own here-before	0.38
subject person +1	-0.20
subject person -2	-0.45
subject person -3	-0.23
subject person -4	-0.33
subject person here-after	0.60
subject pointer +1	-0.26
subject pointer -1	0.20
subject pointer -2	0.12
subject pointer -3	-0.23
subject pointer -4	-0.35
subject pointer here-after	0.34
touches-after	0.18
touches-before	0.44
unit none defect	-0.18
unit none finish	-0.20
unit none fixture	0.20
unit none part	0.24
unit none surface	0.13
unit none tells	-0.15
unit none verbish	-0.12
unit none word	-0.20
use buy	0.13
use measure	-0.29
use see	0.26
where +1	-0.20
where -4	-0.22
where here-after	0.13
where here-before	0.34
whole after at material	-0.20
whole after at word	-0.23
whole after end defect	-0.13
whole after for defect	-0.10
whole after in defect	-0.17
whole after in material	0.28
whole after in word	0.26
whole after on word	-0.17
whole after quantity defect	-0.21
whole after quantity fixture	0.12
whole after quantity material	-0.24
whole after quantity part	0.32
whole after quantity verbish	-0.17
whole after quantity word	0.22
whole after term area	-0.13
whole after term fixture	0.32
whole after term part	-0.26
whole after term word	-0.19
whole after word defect	-0.16
whole after word fixture	0.45
whole after word surface	-0.10
whole after word verbish	-0.15
whole article a	-0.21
whole article none	-0.29
whole article other	-0.11
whole behind about +1	-0.13
whole behind about here-before	-0.47
whole behind at +1	-0.14
whole behind at -1	-0.18
whole behind at -2	-0.20
whole behind at -3	-0.17
whole behind at -4	-0.19
whole behind at here-after	-0.24
whole behind at here-before	0.56
whole behind by -1	-0.14
whole behind by -2	-0.14
whole behind by here-after	0.37
whole behind down +1	-0.23
whole behind down here-after	0.18
whole behind end +1	-0.15
whole behind end -4	-0.21
whole behind end here-after	-0.13
whole behind end here-before	0.17
whole behind for here-after	-0.40
whole behind from +1	-0.22
whole behind from -2	-0.23
whole behind from -4	-0.14
whole behind in +1	-0.21
whole behind in -1	-0.38
whole behind in -2	-0.28
whole behind in -3	-0.13
whole behind in -4	-0.13
whole behind in here-before	0.21
whole behind mark -1	-0.19
whole behind mark here-after	0.47
whole behind off -1	-0.29
whole behind off -3	-0.12
whole behind on +1	-0.15
whole behind on -1	-0.19
whole behind on -2	0.25
whole behind on here-after	-0.16
whole behind out +1	-0.12
whole behind out -1	-0.24
whole behind out -2	0.13
whole behind out -4	-0.13
whole behind out here-before	-0.19
whole behind quantity -1	0.30
whole behind quantity -3	-0.16
whole behind quantity -4	-0.27
whole behind term +1	-0.25
whole behind term -2	-0.20
whole behind term -3	-0.21
whole behind term -4	-0.21
whole behind term here-after	-0.14
whole behind up -1	0.25
whole behind word +1	-0.12
whole behind word -2	-0.11
whole behind word -3	-0.13
whole behind word -4	-0.14
whole behind word here-before	-0.12
whole behind-verb	-0.12
whole between are	0.13
whole between be	0.12
whole between have	0.19
whole between is	0.43
whole counted length	0.11
whole counted pack	-0.12
whole counted pressure	-0.11
whole far after 2	-0.14
whole far before 1	0.24
whole far before 13+	-0.30
whole far before 8-12	-0.11
whole figure-between	-0.16
whole flawed	-0.15
whole frame copula +1	-0.16
whole frame copula -1	0.21
whole frame copula -3	-0.12
whole frame copula -4	-0.21
whole frame imperative +1	0.31
whole frame imperative -1	-0.27
whole frame imperative -2	0.37
whole frame imperative -3	-0.19
whole frame imperative -4	-0.26
whole frame imperative here-after	-0.12
whole frame imperative here-before	0.28
whole frame modal +1	0.77
whole frame modal -1	-0.28
whole frame modal -3	-0.13
whole frame modal -4	-0.25
whole frame none +1	-0.27
whole frame none -1	-0.15
whole frame none -2	-0.17
whole frame none -3	-0.15
whole frame none -4	-0.15
whole frame none here-after	-0.15
whole frame owed +1	-0.28
whole frame owed -1	-0.52
whole frame owed -2	-0.25
whole frame owed -3	-0.29
whole frame owed -4	-0.22
whole frame owed here-after	0.11
whole frame past +1	-0.15
whole frame past -3	-0.14
whole frame past -4	-0.14
whole frame past here-after	0.11
whole frame present +1	-0.19
whole frame present -1	-0.18
whole frame present -2	-0.22
whole frame present -3	-0.13
whole frame present -4	-0.17
whole frame present here-before	0.11
whole heading +1	-0.15
whole heading -2	0.19
whole heading -3	-0.12
whole kind +1 area	-0.14
whole kind +1 defect	-0.17
whole kind +1 finish	-0.17
whole kind +1 fixture	-0.15
whole kind +1 size	-0.18
whole kind +1 tells	-0.13
whole kind +1 verbish	-0.17
whole kind +1 word	-0.13
whole kind -1 area	0.16
whole kind -1 defect	-0.26
whole kind -1 finish	-0.29
whole kind -1 fixture	0.36
whole kind -1 size	-0.14
whole kind -1 tells	-0.17
whole kind -1 tool	-0.12
whole kind -2 area	-0.13
whole kind -2 defect	-0.15
whole kind -2 finish	-0.11
whole kind -2 fixture	0.31
whole kind -2 material	-0.12
whole kind -2 size	-0.13
whole kind -2 tool	-0.12
whole kind -2 verbish	-0.12
whole kind -2 word	-0.15
whole kind -2 work	-0.12
whole kind -3 material	-0.12
whole kind -3 part	-0.15
whole kind -3 size	-0.11
whole kind -3 surface	-0.12
whole kind -3 tool	-0.12
whole kind -4 area	-0.10
whole kind -4 fixture	-0.11
whole kind -4 part	-0.13
whole kind -4 surface	-0.13
whole kind defect	-0.17
whole kind finish	-0.17
whole kind fixture	0.18
whole kind here-after defect	-0.13
whole kind here-after fixture	0.27
whole kind here-after part	0.11
whole kind here-after verbish	-0.10
whole kind here-before fixture	0.23
whole kind here-before surface	0.26
whole kind size	-0.11
whole kind tells	-0.16
whole kind tool	-0.12
whole kind word	-0.17
whole kind work	-0.13
whole lead a -3	-0.13
whole lead a -4	-0.21
whole lead area -1	-0.17
whole lead area -4	-0.23
whole lead area here-after	-0.12
whole lead fixture -1	-0.34
whole lead fixture -2	-0.22
whole lead fixture -3	-0.17
whole lead fixture -4	-0.19
whole lead fixture here-after	0.21
whole lead fixture here-before	0.35
whole lead material -1	-0.14
whole lead material -2	-0.11
whole lead material -3	-0.17
whole lead material -4	-0.19
whole lead material here-after	-0.27
whole lead material here-before	-0.13
whole lead part -1	-0.19
whole lead part -2	-0.27
whole lead part -3	-0.23
whole lead part -4	-0.25
whole lead part here-after	-0.42
whole lead quantity -1	0.17
whole lead quantity -2	-0.19
whole lead quantity -4	-0.26
whole lead quantity here-after	-0.24
whole lead quantity here-before	0.16
whole lead size -1	-0.49
whole lead size here-after	0.57
whole lead size here-before	-0.32
whole lead surface -1	0.30
whole lead surface -3	-0.24
whole lead surface -4	-0.20
whole lead surface here-after	-0.31
whole lead surface here-before	-0.13
whole lead the -1	-0.35
whole lead the -2	-0.24
whole lead the -3	-0.13
whole lead the here-after	0.31
whole lead verbish -1	-0.17
whole lead verbish -4	-0.14
whole lead verbish here-after	0.22
whole lead verbish here-before	0.20
whole lead word -1	0.26
whole lead word -3	-0.13
whole lead word -4	-0.21
whole lead word here-after	-0.12
whole lemma be subject-late	0.46
whole lemma get object	0.13
whole lemma go object	0.51
whole lemma go subject	0.17
whole lemma have object	-0.20
whole lemma leave object	0.28
whole lemma say object	0.24
whole lemma sit object	-0.40
whole opens-with +1	-0.16
whole opens-with -2	-0.22
whole opens-with -3	-0.14
whole opens-with -4	-0.20
whole part +1 bare	-0.12
whole part +1 object	-0.19
whole part +1 opens	-0.18
whole part +1 subject-late	-0.17
whole part -1 bare	-0.15
whole part -2 bare	-0.13
whole part -2 opens	-0.11
whole part -3 object	-0.12
whole part -3 subject-late	-0.16
whole part -4 object	-0.15
whole part -4 opens	-0.10
whole part -4 subject-late	-0.18
whole part bare	-0.15
whole part bare area	-0.13
whole part bare material	-0.16
whole part bare part	-0.14
whole part bare verbish	-0.20
whole part here-after bare	-0.18
whole part here-before bare	0.19
whole part here-before subject-late	0.27
whole part object	-0.24
whole part object defect	-0.16
whole part object finish	-0.17
whole part object fixture	0.22
whole part object material	-0.10
whole part object surface	-0.10
whole part object tells	-0.17
whole part object tool	-0.11
whole part object verbish	-0.11
whole part object word	-0.12
whole part opens	-0.16
whole part opens area	-0.11
whole part opens defect	-0.16
whole part opens size	-0.12
whole part opens surface	-0.19
whole part opens word	-0.14
whole part opens work	-0.11
whole part subject fixture	0.10
whole part subject size	-0.15
whole part subject tells	-0.20
whole part subject verbish	0.20
whole part subject-late area	-0.28
whole part subject-late fixture	0.18
whole part subject-late size	-0.14
whole part subject-late surface	0.41
whole part subject-late verbish	-0.13
whole part subject-late word	-0.16
whole prep across	-0.15
whole prep after	-0.26
whole prep around	0.18
whole prep before	-0.18
whole prep behind	0.97
whole prep down	-0.16
whole prep from	-0.11
whole prep here-after behind	0.46
whole prep here-after by	0.18
whole prep here-after in	0.20
whole prep here-after of	-0.11
whole prep here-after to	-0.23
whole prep here-after with	-0.19
whole prep here-before for	0.40
whole prep here-before in	-0.37
whole prep here-before on	0.59
whole prep into	0.33
whole prep of	-0.12
whole prep off	-0.13
whole prep other after	-0.26
whole prep other along	0.11
whole prep other at	-0.19
whole prep other before	-0.20
whole prep other behind	0.66
whole prep other for	-0.12
whole prep other from	-0.17
whole prep other of	-0.15
whole prep other off	-0.17
whole prep other out	-0.13
whole prep other over	-0.19
whole prep other under	-0.19
whole prep other with	-0.12
whole prep out	-0.19
whole prep toward	-0.49
whole prep under	0.24
whole prep with	-0.10
whole rank after 0	-0.11
whole rank after 3	-0.13
whole rank after 4	-0.23
whole rank before 3	-0.10
whole rank before 4	-0.22
whole says copula	-0.13
whole says imperative	-0.15
whole says none	-0.23
whole says owed	-0.15
whole sentences -1	-0.34
whole sentences -1 bare	-0.19
whole sentences -1 object	-0.21
whole sentences -1 opens	-0.18
whole sentences -1 subject	-0.21
whole sentences -1 subject-late	-0.19
whole sentences -2	-0.19
whole sentences -2 opens	-0.13
whole sentences -2 subject-late	-0.14
whole sentences 1	-0.21
whole sentences 1 bare	-0.17
whole sentences 1 object	-0.17
whole sentences 1 opens	-0.14
whole sentences 1 subject	-0.13
whole sentences 1 subject-late	-0.14
whole size 1	-0.18
whole size 2	-0.19
whole size 3	-0.13
whole subject none +1	-0.24
whole subject none -1	-0.20
whole subject none -2	-0.12
whole subject none -3	-0.15
whole subject none -4	-0.18
whole subject none here-after	-0.16
whole subject own +1	-0.17
whole subject own -2	-0.14
whole subject own -3	-0.13
whole subject own -4	-0.17
whole subject own here-before	0.11
whole subject person +1	0.25
whole subject person -1	-0.14
whole subject person -2	-0.15
whole subject person -4	-0.29
whole subject person here-before	-0.33
whole subject pointer -1	0.19
whole subject pointer -3	-0.15
whole subject pointer -4	-0.24
whole subject pointer here-before	-0.13
whole unit none defect	-0.17
whole unit none finish	-0.17
whole unit none fixture	0.18
whole unit none size	-0.11
whole unit none tells	-0.16
whole unit none tool	-0.12
whole unit none word	-0.17
whole unit none work	-0.13
whole use buy	-0.24
whole use have	-0.10
whole use measure	-0.16
whole use see	-0.18
whole use use	-0.18
whole where +1	-0.16
whole where -2	-0.12
whole where -3	-0.14
whole where -4	-0.19`;

export const POINTER = `article a	-0.25
article none	-0.23
article other	-0.25
article the	0.46
counted length	-0.21
counted pack	-0.20
does be area	-0.16
does be defect	-0.48
does be fixture	0.24
does be size	-0.28
does be tool	0.35
does be verbish	0.42
does come defect	-0.15
does cut fixture	-0.22
does cut material	-0.36
does cut surface	0.55
does get area	-0.50
does get defect	0.34
does get fixture	0.18
does get surface	0.10
does get verbish	-0.18
does get word	-0.33
does go defect	-0.36
does go part	0.36
does have word	-0.40
does put area	-0.13
does put fixture	0.34
does put material	0.27
does put surface	-0.45
does take defect	0.26
does take fixture	-0.14
does want material	-0.10
far before 0	-0.28
far before 13+	-0.17
far before 2	0.11
far before 8-12	0.22
flawed	0.31
frame copula -2	0.24
frame copula -3	-0.24
frame copula area	0.19
frame copula defect	-0.59
frame copula here-before	-0.24
frame copula material	0.32
frame copula part	0.26
frame copula size	-0.54
frame copula tells	-0.39
frame copula verbish	0.50
frame copula word	-0.26
frame imperative -1	-0.27
frame imperative -2	0.10
frame imperative -3	0.52
frame imperative -4	-0.28
frame imperative area	-0.31
frame imperative defect	0.24
frame imperative fixture	0.27
frame imperative here-before	-0.28
frame imperative material	0.19
frame imperative part	0.38
frame imperative size	-0.37
frame imperative surface	-0.29
frame imperative verbish	-0.36
frame imperative word	-0.28
frame modal -3	0.23
frame modal defect	-0.23
frame modal fixture	-0.16
frame modal here-before	-0.23
frame modal material	-0.20
frame modal part	0.72
frame modal size	0.28
frame modal surface	0.20
frame modal verbish	-0.30
frame modal word	-0.10
frame none -1	0.22
frame none -2	0.18
frame none -3	-0.41
frame none area	0.90
frame none finish	-0.40
frame none fixture	0.15
frame none material	-0.26
frame none part	0.33
frame none size	0.85
frame none surface	-0.19
frame none tool	-0.46
frame none verbish	-0.22
frame none word	-0.45
frame owed -1	0.22
frame owed -2	0.32
frame owed -3	-0.16
frame owed -4	-0.43
frame owed area	0.19
frame owed defect	0.24
frame owed finish	-0.13
frame owed fixture	0.30
frame owed here-before	0.12
frame owed part	0.74
frame owed size	-0.57
frame owed surface	-0.44
frame owed tells	-0.38
frame owed verbish	-0.24
frame owed word	-0.11
frame past -1	0.53
frame past -2	-0.19
frame past -4	-0.66
frame past area	-0.30
frame past defect	-0.14
frame past finish	-0.20
frame past fixture	0.28
frame past here-before	0.40
frame past material	0.42
frame past part	0.10
frame past size	0.21
frame past tool	-0.13
frame past verbish	-0.23
frame past word	-0.23
frame present -1	0.11
frame present -2	-0.22
frame present -4	0.12
frame present defect	-0.16
frame present fixture	0.60
frame present material	-0.23
frame present part	-0.68
frame present surface	0.43
heading -1	-0.13
join	-0.18
join +1 finish	0.23
join +1 fixture	-0.20
join +1 size	0.14
join +1 surface	0.18
join +1 verbish	-0.11
join -1 finish	-0.23
join -1 fixture	0.13
join -2	-0.17
join -2 area	-0.11
join -2 finish	-0.10
join -3	-0.18
join -3 area	-0.15
join -3 finish	-0.14
join -3 part	-0.11
join -3 surface	-0.16
join -3 tool	-0.17
join area+finish	0.19
join area+size	0.26
join area+tool	-0.22
join defect	-0.12
join defect+finish	-0.12
join defect+tool	-0.13
join finish+tool	0.11
join fixture	0.18
join fixture+area	0.21
join fixture+finish	-0.26
join fixture+surface	0.29
join fixture+tool	-0.14
join leads around	0.14
join leads by	0.36
join leads for	0.31
join leads on word word	-0.14
join leads quantity word quantity	-0.15
join leads time	0.18
join leads to	-0.11
join leads under	0.17
join leads verb in	-0.11
join leads word quantity	-0.14
join leads word quantity word	-0.17
join leads word verb quantity	-0.16
join leads word word verb	-0.14
join links around	0.19
join links at quantity	0.13
join links at word term	-0.16
join links behind	0.78
join links by	1.07
join links by term verb	0.15
join links in	0.47
join links of	0.25
join links on	0.47
join links on word word	-0.25
join links quantity	-0.19
join links quantity word quantity	-0.23
join links time	0.20
join links to	-0.20
join links under	0.28
join links verb	0.11
join links verb in	-0.35
join links verb verb	-0.18
join links verb verb out	-0.17
join links word quantity	-0.15
join links word quantity word	-0.10
join links word verb in	-0.23
join links word verb quantity	-0.32
join links word word	0.21
join links word word verb	-0.31
join material+finish	-0.15
join material+fixture	0.32
join material+part	0.14
join material+tells	-0.15
join material+tool	0.20
join part+defect	-0.11
join part+finish	0.30
join part+surface	-0.16
join part+tells	-0.15
join part+verbish	-0.12
join same-after	0.20
join same-after area	0.28
join same-after finish	0.29
join same-after fixture	0.47
join same-after material	0.14
join same-after part	0.15
join same-after tells	-0.27
join same-after tool	0.43
join same-before surface	0.13
join size	-0.24
join size 2	-0.25
join size 3	-0.15
join size+part	0.18
join size+surface	-0.25
join size+word	-0.10
join sizes 1+1	0.16
join sizes 1+2	-0.18
join sizes 2+1	-0.20
join sizes 3+1	-0.18
join surface+part	-0.10
join surface+size	-0.12
join surface+surface	0.32
join surface+tool	0.16
join tells	-0.17
join tool	0.17
join tool+area	-0.14
join tool+finish	0.80
join tool+material	0.17
join verbish	-0.17
join verbish+finish	-0.17
join verbish+surface	-0.11
join word	-0.18
join work	-0.16
kind -1 area	0.68
kind -1 fixture	0.30
kind -1 part	0.82
kind -1 size	0.68
kind -1 tells	-0.54
kind -1 verbish	-0.19
kind -1 word	-0.16
kind -2 area	0.12
kind -2 finish	-0.28
kind -2 fixture	0.35
kind -2 material	0.26
kind -2 part	0.31
kind -2 size	-0.33
kind -2 surface	-0.11
kind -2 tells	-0.20
kind -2 tool	-0.43
kind -2 verbish	-0.22
kind -3 area	0.22
kind -3 finish	-0.32
kind -3 fixture	0.15
kind -3 material	-0.12
kind -3 part	0.12
kind -3 size	-0.68
kind -3 surface	0.24
kind -3 tells	-0.20
kind -3 tool	-0.19
kind -3 verbish	0.41
kind -3 word	-0.23
kind -4 area	-0.30
kind -4 defect	-0.11
kind -4 finish	-0.10
kind -4 fixture	0.11
kind -4 part	-0.46
kind -4 size	-0.28
kind -4 surface	-0.10
kind -4 tells	-0.12
kind -4 tool	-0.35
kind -4 verbish	-0.20
kind area	0.11
kind defect	-0.11
kind finish	-0.25
kind fixture	0.25
kind here-before area	-0.32
kind here-before material	0.23
kind here-before part	0.60
kind here-before surface	-0.43
kind here-before verbish	-0.16
kind here-before word	-0.29
kind material	0.10
kind part	0.31
kind tells	-0.40
kind tool	-0.12
kind word	-0.21
kind work	-0.34
number many many	0.67
number many one	-0.64
number none many	0.25
number none one	-0.13
part -1 opens	0.31
part -1 subject	0.29
part -1 subject-late	0.17
part -2 bare	-0.19
part -2 object	0.13
part -3 object	-0.21
part -3 opens	0.16
part -3 subject	0.16
part -4 bare	-0.11
part -4 object	-0.19
part -4 subject	-0.13
part -4 subject-late	-0.47
part bare	-0.12
part bare defect	-0.27
part bare fixture	0.19
part bare material	-0.20
part bare part	0.25
part bare surface	-0.34
part bare verbish	0.29
part bare word	-0.29
part here-before object	-0.18
part here-before subject	0.17
part here-before subject-late	-0.33
part object	-0.14
part object area	0.16
part object defect	-0.18
part object finish	-0.34
part object fixture	0.12
part object material	-0.14
part object part	0.40
part object tells	-0.16
part object tool	-0.18
part object word	-0.10
part opens	0.21
part opens defect	0.47
part opens fixture	0.79
part opens material	0.35
part opens part	0.33
part opens tells	-0.23
part opens verbish	-0.50
part opens word	-0.20
part opens work	-0.30
part subject	0.13
part subject area	0.25
part subject defect	-0.47
part subject fixture	0.16
part subject material	0.34
part subject size	-0.11
part subject surface	0.21
part subject tells	-0.63
part subject tool	-0.15
part subject verbish	-0.12
part subject-late	-0.10
part subject-late area	-0.15
part subject-late fixture	-0.19
part subject-late material	0.31
part subject-late surface	-0.28
part subject-late word	-0.29
points em -2	0.57
points em -3	-0.20
points em -4	-0.48
points em bare	-0.30
points em subject	0.12
points it -2	-0.12
points it bare	-0.16
points it here-before	0.12
points it object	-0.17
points it subject	0.17
points none -1	0.33
points none -3	-0.26
points none bare	-0.18
points none here-before	-0.19
points none object	-0.29
points none opens	0.39
points one -1	0.35
points one -2	0.28
points one -3	-0.26
points one -4	-0.72
points one bare	0.11
points one here-before	0.14
points one object	0.16
points one opens	-0.37
points one subject	0.26
points one subject-late	-0.44
points that -1	0.32
points that -3	0.20
points that -4	-0.45
points that bare	0.13
points that here-before	-0.32
points that opens	0.26
points that subject-late	-0.33
points them -1	-0.15
points them -2	-0.23
points them -3	0.58
points them object	0.25
points them subject	-0.12
points they -1	-0.20
points they -2	0.38
points they -4	-0.13
points they bare	-0.12
points they object	-0.45
points they subject	0.92
points those -1	0.25
points those -2	0.45
points those -4	-0.46
points those object	0.20
prep around	0.11
prep at	-0.18
prep before	-0.36
prep behind	-0.24
prep by	-0.72
prep from	-0.28
prep here-before in	-0.25
prep here-before of	-0.46
prep in	-0.19
prep into	0.29
prep of	-0.42
prep off	-0.25
prep on	-0.18
prep other around	0.11
prep other at	-0.24
prep other before	-0.36
prep other behind	-0.24
prep other by	-0.66
prep other from	-0.48
prep other in	-0.17
prep other into	0.29
prep other of	-0.39
prep other off	-0.25
prep other on	-0.16
prep other out	0.23
prep other over	-0.54
prep other to	-0.30
prep other under	-0.66
prep other with	-0.25
prep out	0.45
prep over	-0.64
prep to	-0.34
prep under	-0.66
prep with	-0.25
rank before 1	0.14
rank before 3	0.13
rank before 4	-0.25
says copula	0.12
says imperative	0.11
says modal	-0.16
says owed	0.16
says past	-0.14
says present	-0.26
sentences -1	-0.64
sentences -1 bare	-0.61
sentences -1 object	-0.14
sentences -1 opens	-0.49
sentences -1 subject	-0.16
sentences -1 subject-late	-0.59
sentences -2	-0.44
sentences -2 bare	-0.33
sentences -2 object	-0.22
sentences -2 opens	-0.17
sentences -2 subject	-0.24
sentences -2 subject-late	-0.31
size 1	-0.45
size 2	0.45
size 3	0.55
use buy	0.39
use have	-0.32
use move	-0.33
use need	0.13
use say	-0.47
use see	0.64
use use	-0.25
where -1	0.21
where -4	-0.24
whole article a	0.20
whole article none	-0.29
whole article other	-0.19
whole article the	0.13
whole behind-verb	-0.13
whole counted count	0.23
whole counted pack	0.23
whole does be area	-0.18
whole does be defect	-0.26
whole does be material	-0.24
whole does be part	0.23
whole does be size	-0.20
whole does be surface	0.62
whole does be tool	0.11
whole does come defect	-0.21
whole does cut fixture	0.49
whole does cut material	-0.15
whole does get area	-0.12
whole does get fixture	0.13
whole does get material	0.19
whole does get surface	0.10
whole does get verbish	-0.21
whole does get word	-0.17
whole does go defect	-0.22
whole does go part	-0.13
whole does go surface	0.56
whole does go word	0.39
whole does have word	-0.43
whole does put area	0.21
whole does put defect	0.16
whole does put fixture	0.46
whole does put material	-0.21
whole does put surface	-0.35
whole does put word	-0.25
whole does swap word	0.17
whole does take fixture	-0.18
whole does want word	-0.17
whole far before 0	0.18
whole far before 13+	-0.25
whole frame copula -1	0.15
whole frame copula -4	-0.26
whole frame copula defect	-0.19
whole frame copula finish	0.45
whole frame copula fixture	0.22
whole frame copula here-before	-0.22
whole frame copula material	-0.11
whole frame copula part	0.33
whole frame copula size	-0.11
whole frame copula surface	0.13
whole frame copula tells	-0.30
whole frame copula tool	-0.12
whole frame copula word	-0.24
whole frame imperative -1	-0.15
whole frame imperative -2	0.17
whole frame imperative -4	-0.38
whole frame imperative finish	0.49
whole frame imperative fixture	0.15
whole frame imperative here-before	-0.21
whole frame imperative material	-0.25
whole frame imperative surface	-0.35
whole frame imperative verbish	-0.24
whole frame imperative word	-0.20
whole frame modal -2	-0.11
whole frame modal defect	-0.12
whole frame modal finish	0.31
whole frame modal fixture	-0.27
whole frame modal here-before	0.13
whole frame modal material	0.20
whole frame modal size	0.25
whole frame modal surface	0.38
whole frame modal tool	-0.26
whole frame modal word	-0.30
whole frame none -1	0.19
whole frame none -2	-0.22
whole frame none -3	-0.12
whole frame none -4	-0.13
whole frame none finish	-0.34
whole frame none fixture	-0.17
whole frame none material	0.18
whole frame none part	0.15
whole frame none surface	0.15
whole frame none tells	-0.20
whole frame none word	-0.40
whole frame owed -2	0.49
whole frame owed -3	-0.23
whole frame owed -4	-0.22
whole frame owed area	0.29
whole frame owed defect	-0.20
whole frame owed finish	-0.32
whole frame owed fixture	0.27
whole frame owed here-before	0.59
whole frame owed material	-0.12
whole frame owed part	-0.27
whole frame owed size	-0.24
whole frame owed surface	0.36
whole frame owed tells	-0.15
whole frame owed verbish	-0.19
whole frame owed word	0.36
whole frame past -2	-0.20
whole frame past -3	-0.25
whole frame past -4	-0.31
whole frame past area	-0.11
whole frame past defect	-0.28
whole frame past fixture	0.26
whole frame past here-before	0.54
whole frame past part	-0.22
whole frame past tells	0.18
whole frame past tool	-0.17
whole frame past verbish	-0.31
whole frame past word	-0.25
whole frame present -2	0.36
whole frame present -4	-0.18
whole frame present area	-0.18
whole frame present defect	0.36
whole frame present finish	-0.27
whole frame present fixture	0.35
whole frame present here-before	0.26
whole frame present material	-0.47
whole frame present part	-0.34
whole frame present size	0.21
whole frame present tool	0.37
whole frame present word	0.31
whole heading -1	0.13
whole heading -2	-0.16
whole kind -1 area	0.32
whole kind -1 defect	-0.13
whole kind -1 finish	0.49
whole kind -1 size	0.14
whole kind -1 surface	0.57
whole kind -1 tells	-0.37
whole kind -1 word	-0.25
whole kind -2 area	-0.11
whole kind -2 defect	-0.17
whole kind -2 finish	0.27
whole kind -2 fixture	0.33
whole kind -2 material	-0.15
whole kind -2 size	-0.21
whole kind -2 surface	0.18
whole kind -2 tool	-0.18
whole kind -2 verbish	-0.21
whole kind -2 word	0.15
whole kind -3 area	-0.10
whole kind -3 finish	-0.23
whole kind -3 fixture	0.18
whole kind -3 size	-0.12
whole kind -3 surface	-0.17
whole kind -3 tells	-0.14
whole kind -3 tool	-0.16
whole kind -3 word	-0.10
whole kind -4 defect	-0.12
whole kind -4 finish	-0.28
whole kind -4 part	-0.13
whole kind -4 size	-0.13
whole kind -4 surface	-0.20
whole kind -4 tells	-0.12
whole kind -4 tool	-0.16
whole kind -4 verbish	-0.14
whole kind -4 word	-0.12
whole kind defect	-0.13
whole kind finish	0.13
whole kind fixture	0.13
whole kind here-before area	-0.34
whole kind here-before defect	0.52
whole kind here-before material	0.42
whole kind here-before surface	-0.19
whole kind here-before verbish	-0.12
whole kind here-before word	-0.13
whole kind tells	-0.23
whole kind verbish	-0.12
whole kind word	-0.13
whole kind work	-0.15
whole number many many	0.13
whole number many one	-0.55
whole number none one	-0.30
whole number one many	-0.13
whole part -1 bare	0.11
whole part -1 opens	-0.13
whole part -2 opens	-0.15
whole part -2 subject-late	0.47
whole part -3 subject-late	-0.16
whole part -4 bare	-0.23
whole part -4 object	-0.25
whole part bare area	-0.22
whole part bare size	0.20
whole part bare surface	0.40
whole part bare verbish	-0.37
whole part bare word	-0.12
whole part here-before object	0.19
whole part here-before subject	0.28
whole part here-before subject-late	-0.20
whole part object area	0.13
whole part object defect	-0.11
whole part object fixture	0.23
whole part object size	-0.11
whole part object tells	-0.16
whole part object verbish	-0.10
whole part object word	-0.12
whole part opens	-0.14
whole part opens area	-0.21
whole part opens defect	-0.14
whole part opens material	-0.12
whole part opens size	-0.23
whole part opens surface	0.21
whole part opens tells	-0.11
whole part opens verbish	-0.13
whole part opens work	-0.12
whole part subject area	-0.18
whole part subject defect	-0.31
whole part subject fixture	0.11
whole part subject size	0.25
whole part subject tells	-0.33
whole part subject-late fixture	0.20
whole part subject-late part	-0.29
whole part subject-late surface	0.32
whole points em -1	-0.66
whole points em -3	-0.30
whole points em -4	-0.26
whole points em bare	-0.38
whole points em object	-0.28
whole points em subject	-0.17
whole points it -2	0.19
whole points it -3	-0.21
whole points it -4	-0.17
whole points it here-before	-0.34
whole points none -1	-0.11
whole points none -2	-0.16
whole points none -4	-0.20
whole points none bare	-0.16
whole points none here-before	0.47
whole points none object	-0.18
whole points none opens	-0.17
whole points one -1	0.34
whole points one -2	-0.13
whole points one -3	-0.18
whole points one -4	-0.42
whole points one here-before	0.52
whole points one object	0.34
whole points one opens	-0.35
whole points one subject-late	-0.29
whole points that -1	0.23
whole points that -2	-0.11
whole points that -4	-0.32
whole points that bare	0.26
whole points that here-before	0.20
whole points that subject	-0.11
whole points that subject-late	-0.11
whole points them -2	0.17
whole points them object	-0.22
whole points they -1	-0.43
whole points they -2	0.50
whole points they -3	0.14
whole points they -4	-0.11
whole points they bare	-0.14
whole points they object	-0.27
whole points those -1	-0.12
whole points those -4	-0.25
whole points those object	-0.32
whole prep along	0.22
whole prep around	0.36
whole prep at	-0.11
whole prep before	-0.24
whole prep behind	1.21
whole prep for	-0.14
whole prep from	-0.17
whole prep here-before in	-0.45
whole prep here-before of	-0.59
whole prep in	0.30
whole prep into	0.20
whole prep other along	0.22
whole prep other around	0.36
whole prep other at	-0.16
whole prep other before	-0.24
whole prep other behind	1.21
whole prep other for	-0.14
whole prep other from	-0.23
whole prep other in	0.37
whole prep other into	0.20
whole prep other of	0.21
whole prep other on	0.12
whole prep other over	-0.22
whole prep other to	-0.24
whole prep other under	-0.35
whole prep other with	-0.22
whole prep over	-0.30
whole prep to	-0.25
whole prep under	-0.35
whole prep with	-0.22
whole rank before 4	-0.25
whole says copula	-0.10
whole says none	-0.15
whole sentences -1	-0.30
whole sentences -1 bare	-0.11
whole sentences -1 object	-0.25
whole sentences -1 opens	-0.12
whole sentences -1 subject	-0.19
whole sentences -2	-0.27
whole sentences -2 bare	-0.23
whole sentences -2 object	-0.18
whole sentences -2 opens	-0.10
whole sentences -2 subject-late	-0.33
whole size 2	-0.21
whole use buy	-0.23
whole use say	0.45
whole use see	-0.25
whole use use	0.16
whole use work	-0.15
whole where -3	-0.10
whole where -4	-0.25
whole where here-before	0.19`;
