/** Written by `tests/learn/naming.ts`: a sign and its weight a line. */
export const FIGURE = `after at part	0.28
after at surface	-0.09
after in word	-0.07
after of material	0.16
after of word	-0.19
after on surface	0.09
after on tells	-0.09
after on word	-0.14
after term defect	-0.07
after term fixture	-0.19
after term material	0.10
after term part	0.49
after term size	0.08
after term surface	-0.07
after word defect	-0.08
after word material	-0.08
after word size	0.23
after word surface	-0.11
article a	-0.15
article none	-0.08
article other	-0.14
article the	0.19
behind across -1	0.47
behind after -2	-0.31
behind at +1	-0.18
behind at -1	-0.21
behind at -2	0.32
behind at -3	-0.07
behind at -4	-0.24
behind at here-before	0.24
behind below +1	-0.14
behind below -1	0.28
behind below here-before	0.09
behind by +1	-0.18
behind by -1	-0.10
behind by -2	0.10
behind by -3	-0.13
behind by here-after	-0.18
behind by here-before	0.43
behind deep +1	-0.10
behind deep -1	0.26
behind deep -3	-0.61
behind deep -4	-0.12
behind deep here-before	0.31
behind down here-before	0.11
behind end +1	-0.17
behind end -1	0.13
behind end -2	-0.12
behind end -4	-0.15
behind end here-before	0.28
behind for -1	0.34
behind for -2	-0.10
behind for -3	0.06
behind for -4	-0.24
behind for here-after	-0.19
behind from +1	-0.15
behind from -1	0.22
behind from -2	-0.17
behind from -3	-0.14
behind from -4	-0.11
behind from here-before	0.33
behind high +1	-0.18
behind high -1	0.21
behind high -2	0.07
behind high -3	-0.21
behind in +1	-0.10
behind in -1	0.26
behind in -2	-0.07
behind in -3	-0.12
behind in -4	-0.17
behind in here-after	-0.13
behind in here-before	0.23
behind long -1	0.20
behind long -2	-0.21
behind long -3	-0.34
behind long here-before	0.40
behind of +1	-0.20
behind of -1	0.22
behind of -2	-0.20
behind of -3	-0.14
behind of -4	-0.30
behind of here-before	0.41
behind off +1	-0.16
behind off -1	0.07
behind off -2	-0.15
behind off -3	-0.28
behind off -4	-0.24
behind off here-after	-0.06
behind off here-before	0.69
behind on +1	-0.28
behind on -2	0.19
behind on -3	0.20
behind on -4	-0.26
behind on here-after	-0.18
behind on here-before	0.19
behind over +1	-0.19
behind over -1	-0.15
behind over -2	-0.23
behind over -3	0.12
behind over -4	-0.10
behind over here-after	-0.15
behind over here-before	0.56
behind quantity -1	0.08
behind quantity -2	-0.23
behind quantity here-after	-0.08
behind quantity here-before	0.27
behind short +1	-0.10
behind short -2	-0.37
behind short -3	-0.12
behind short -4	-0.12
behind short here-after	0.23
behind short here-before	0.42
behind term +1	-0.22
behind term -2	0.21
behind term -3	-0.17
behind term -4	-0.32
behind term here-before	0.47
behind to +1	-0.20
behind to -1	0.36
behind to -2	0.10
behind to -3	-0.30
behind to -4	-0.18
behind to here-after	-0.13
behind to here-before	0.14
behind toward here-after	-0.21
behind under +1	-0.19
behind under -1	-0.35
behind under here-before	0.42
behind up -1	0.16
behind up -2	0.16
behind up -4	-0.20
behind up here-before	0.12
behind wide +1	-0.11
behind wide -1	-0.22
behind wide -2	-0.19
behind wide here-before	0.50
behind with +1	-0.07
behind with -1	0.15
behind with -3	-0.06
behind with -4	-0.12
behind with here-after	-0.08
behind with here-before	0.17
behind word +1	-0.14
behind word -1	-0.09
behind word -3	0.12
behind word -4	-0.17
behind word here-after	-0.07
behind word here-before	0.32
between 	0.24
between about	-0.33
between and	-0.74
between are	0.10
between at	0.14
between be	-0.31
between by	-0.08
between is	0.33
between read	0.18
between say	-0.27
between sit	0.54
between to	0.36
between want	0.11
carried	0.40
carried -1 none	0.07
carried -1 own	0.19
carried -1 pointer	0.62
carried -1 tells	0.96
carried -2 none	0.36
carried -2 own	0.06
carried -2 pointer	0.73
carried -2 tells	0.68
carried -3 pointer	0.52
carried -4 none	-0.43
carried -4 own	-0.11
carried -4 pointer	0.14
carried here-before none	0.36
carried here-before own	0.21
carried here-before pointer	0.34
counted count	-0.09
counted current	-0.11
counted length	-0.15
counted pack	-0.15
counted slope	-0.08
counted time	0.10
far after 1	-0.16
far after 13+	-0.22
far after 2	-0.12
far after 3-4	-0.06
far after 5-7	-0.13
far after 8-12	-0.12
far before 0	0.25
far before 1	0.13
far before 13+	-0.24
far before 2	0.21
far before 3-4	0.20
far before 5-7	0.17
far before 8-12	0.07
flawed	0.13
frame copula +1	-0.15
frame copula -2	-0.07
frame copula -3	-0.09
frame copula -4	-0.23
frame copula here-after	-0.07
frame copula here-before	0.38
frame imperative +1	-0.41
frame imperative -1	0.36
frame imperative -2	-0.27
frame imperative -3	-0.15
frame imperative -4	0.19
frame imperative here-after	-0.23
frame imperative here-before	0.32
frame modal +1	-0.22
frame modal -1	0.38
frame modal -2	0.38
frame modal -3	-0.16
frame modal -4	-0.26
frame modal here-after	-0.20
frame modal here-before	-0.23
frame none +1	-0.19
frame none -1	0.09
frame none -3	-0.12
frame none -4	-0.17
frame none here-before	0.39
frame owed +1	-0.30
frame owed -1	0.13
frame owed -3	-0.07
frame owed -4	-0.23
frame owed here-after	-0.25
frame owed here-before	0.59
frame past +1	-0.19
frame past -2	0.16
frame past -3	-0.22
frame past -4	-0.10
frame past here-before	0.43
frame present +1	-0.26
frame present -1	0.21
frame present -3	0.08
frame present -4	-0.29
frame present here-before	0.18
heading +1	-0.23
heading -2	-0.11
heading here-before	0.43
join	-0.13
join +1	-0.06
join +1 area	-0.09
join +1 finish	-0.12
join +1 tells	0.10
join +1 tool	-0.07
join -1	-0.10
join -1 defect	-0.08
join -1 finish	-0.07
join -1 part	0.12
join -1 size	-0.09
join -1 surface	-0.08
join -1 tells	-0.09
join -1 verbish	-0.09
join -2 area	-0.06
join -2 defect	-0.07
join -2 fixture	0.08
join -2 size	-0.08
join -2 work	-0.13
join -3	-0.16
join -3 defect	-0.08
join -3 material	-0.08
join -3 part	-0.10
join -3 size	-0.11
join -3 tool	-0.07
join -3 word	-0.06
join -3 work	-0.08
join area	-0.10
join area+area	-0.06
join area+tells	-0.07
join defect	-0.09
join defect+size	-0.07
join finish	-0.11
join finish+size	-0.21
join finish+tells	-0.16
join finish+tool	-0.11
join finish+word	0.07
join fixture+size	0.14
join fixture+tells	0.30
join fixture+verbish	0.08
join fixture+work	-0.13
join heading	-0.08
join leads 	0.09
join leads at	0.07
join leads at quantity to	-0.12
join leads at term word	0.08
join leads at word	0.10
join leads at word word	-0.06
join leads behind	0.23
join leads from	-0.07
join leads in word	0.11
join leads of term word	-0.11
join leads on word word	-0.08
join leads over	0.17
join leads term by	-0.19
join leads verb behind	-0.07
join leads verb quantity word	0.19
join leads verb to	0.11
join leads verb word term	-0.11
join leads word on	0.11
join leads word quantity	-0.07
join leads word quantity of	-0.07
join leads word quantity word	-0.06
join leads word term	0.19
join leads word term verb	-0.14
join leads word verb quantity	0.07
join leads word word	0.08
join leads word word quantity	-0.12
join links 	0.11
join links at	0.18
join links at quantity	0.14
join links at quantity to	-0.23
join links at quantity word	-0.07
join links at term word	0.58
join links at word	0.69
join links at word term	-0.13
join links at word word	-0.23
join links behind	0.19
join links behind word word	0.09
join links by term verb	0.24
join links by term word	0.15
join links for	0.18
join links in	0.19
join links in term word	0.15
join links in word	0.07
join links in word term	0.06
join links mark	0.08
join links mark quantity	-0.09
join links of	0.21
join links on	0.13
join links on quantity	-0.15
join links on verb word	-0.10
join links on word word	-0.24
join links over	0.13
join links quantity at	-0.07
join links quantity by quantity	0.15
join links quantity from	-0.38
join links quantity of	0.21
join links quantity on	0.26
join links quantity over	0.14
join links quantity term to	-0.15
join links quantity term word	-0.10
join links quantity word at	-0.24
join links quantity word to	-0.13
join links quantity word word	-0.10
join links term	0.13
join links term at	0.21
join links term by	-0.09
join links term quantity at	-0.24
join links term word	0.16
join links to	0.10
join links to term word	0.40
join links under	-0.14
join links verb	0.18
join links verb at quantity	0.10
join links verb behind	-0.15
join links verb by	-0.07
join links verb on	0.17
join links verb out	0.28
join links verb quantity	0.27
join links verb quantity at	0.21
join links verb quantity off	0.47
join links verb quantity word	0.09
join links verb term word	-0.13
join links verb to	0.14
join links verb verb quantity	-0.16
join links verb with	0.08
join links verb word	0.07
join links verb word quantity	0.12
join links verb word term	-0.08
join links with quantity	0.25
join links word	-0.06
join links word on	0.11
join links word quantity	-0.16
join links word quantity at	0.30
join links word quantity of	-0.07
join links word quantity off	-0.08
join links word quantity on	-0.15
join links word quantity word	-0.37
join links word term	0.29
join links word term at	0.22
join links word term verb	-0.24
join links word verb in	0.10
join links word verb on	0.09
join links word verb quantity	0.46
join links word verb verb	-0.18
join links word verb word	-0.16
join links word word quantity	-0.13
join links word word to	-0.08
join links word word verb	-0.08
join links word word word	-0.07
join material+defect	0.08
join part+area	-0.06
join part+defect	-0.07
join part+material	0.07
join part+size	0.14
join part+tool	0.09
join part+verbish	-0.07
join part+word	-0.07
join same-after	0.18
join same-after defect	0.12
join same-after fixture	0.11
join same-after material	0.17
join same-after size	0.28
join same-after surface	0.23
join same-after tells	-0.13
join same-after tool	0.08
join same-after verbish	0.06
join same-after word	-0.10
join same-before size	0.16
join same-before tells	-0.13
join size	0.10
join size 2	-0.13
join size+defect	-0.09
join size+finish	-0.28
join size+fixture	0.17
join size+size	-0.19
join size+tells	0.11
join size+verbish	0.07
join sizes 1+2	-0.08
join sizes 2+2	-0.10
join sizes 2+3	-0.13
join sizes 3+1	0.06
join sizes 3+2	-0.09
join sizes 3+3	-0.15
join surface+area	-0.07
join surface+defect	0.10
join surface+size	-0.08
join surface+tool	-0.13
join tells	-0.09
join tells+finish	-0.11
join tells+fixture	0.17
join tool	-0.08
join tool+finish	-0.12
join tool+part	0.07
join tool+size	0.19
join tool+surface	-0.13
join verbish	-0.08
join verbish+defect	-0.07
join verbish+fixture	0.09
join verbish+tells	-0.09
join verbish+tool	-0.09
join word+finish	0.07
join word+surface	0.06
join word+tells	-0.10
join word+verbish	-0.07
join word+word	-0.10
join work	-0.09
join work+fixture	-0.08
kind +1 area	-0.12
kind +1 defect	-0.08
kind +1 finish	-0.07
kind +1 fixture	-0.12
kind +1 material	-0.17
kind +1 part	-0.25
kind +1 size	-0.19
kind +1 surface	-0.21
kind +1 tells	-0.06
kind +1 tool	-0.13
kind +1 word	-0.11
kind -1 area	-0.13
kind -1 defect	-0.36
kind -1 finish	-0.41
kind -1 fixture	0.42
kind -1 material	0.33
kind -1 part	0.25
kind -1 size	0.30
kind -1 surface	0.06
kind -1 tells	-0.21
kind -1 tool	-0.11
kind -1 verbish	-0.13
kind -1 word	-0.11
kind -2 area	-0.36
kind -2 defect	-0.10
kind -2 finish	-0.34
kind -2 fixture	0.37
kind -2 material	0.14
kind -2 size	0.24
kind -2 tells	-0.14
kind -2 tool	-0.13
kind -2 verbish	-0.08
kind -2 word	-0.07
kind -2 work	-0.23
kind -3 defect	-0.09
kind -3 finish	-0.07
kind -3 size	-0.36
kind -3 surface	-0.23
kind -3 tells	-0.08
kind -3 tool	-0.10
kind -3 work	-0.07
kind -4 area	-0.07
kind -4 defect	-0.06
kind -4 fixture	-0.16
kind -4 material	-0.11
kind -4 size	-0.10
kind -4 surface	-0.19
kind -4 tool	-0.06
kind area	-0.14
kind defect	-0.16
kind finish	-0.22
kind fixture	0.16
kind here-after area	-0.08
kind here-after defect	-0.08
kind here-after finish	-0.13
kind here-after fixture	-0.24
kind here-after part	0.15
kind here-after tells	-0.10
kind here-after tool	0.09
kind here-after verbish	-0.09
kind here-after word	-0.08
kind here-before area	-0.12
kind here-before finish	0.16
kind here-before fixture	0.26
kind here-before material	0.26
kind here-before part	0.65
kind here-before size	0.31
kind here-before surface	0.48
kind here-before tells	-0.25
kind here-before tool	-0.35
kind here-before verbish	0.13
kind here-before word	0.13
kind material	0.13
kind part	0.14
kind size	0.12
kind tells	-0.18
kind tool	-0.14
kind word	-0.09
kind work	-0.16
lead a -1	-0.16
lead a -2	0.43
lead a -3	-0.37
lead a -4	-0.22
lead a here-after	0.47
lead a here-before	-0.20
lead about -3	-0.15
lead about -4	-0.26
lead about here-after	0.26
lead about here-before	0.37
lead at -2	-0.19
lead at -3	-0.20
lead at -4	-0.24
lead at here-before	0.67
lead by -1	-0.18
lead by -2	0.08
lead by -3	-0.08
lead by here-after	-0.11
lead by here-before	0.38
lead defect -1	-0.21
lead defect -3	-0.07
lead defect -4	-0.09
lead defect here-before	0.25
lead fixture -1	-0.31
lead fixture -2	-0.08
lead fixture -3	-0.17
lead fixture -4	-0.06
lead fixture here-after	-0.10
lead fixture here-before	0.52
lead for -1	0.23
lead for -2	-0.28
lead for -4	-0.06
lead for here-before	0.37
lead in -1	0.08
lead in -2	0.30
lead in -4	-0.18
lead mark -1	0.11
lead mark -2	-0.14
lead mark here-before	0.31
lead material -1	0.12
lead material -2	-0.21
lead material -4	-0.08
lead material here-before	0.14
lead of -2	-0.23
lead out -2	-0.66
lead out -4	-0.26
lead out here-before	0.66
lead over -1	-0.13
lead over -2	0.10
lead over -3	0.31
lead over here-before	-0.06
lead part -1	-0.31
lead part -2	-0.08
lead part -3	-0.09
lead part -4	-0.09
lead part here-before	0.47
lead size -1	-0.16
lead size -2	0.08
lead size -4	-0.14
lead size here-after	-0.09
lead size here-before	0.32
lead surface -1	0.21
lead surface -2	-0.19
lead surface -3	-0.20
lead surface -4	-0.11
lead surface here-after	-0.08
lead surface here-before	0.26
lead to -2	0.19
lead to -4	-0.22
lead to here-before	0.24
lead up -2	-0.25
lead up -3	0.20
lead up -4	-0.25
lead up here-before	0.36
lead verbish -1	0.10
lead verbish -3	-0.16
lead verbish -4	-0.14
lead verbish here-after	-0.12
lead verbish here-before	0.41
lead word -1	0.09
lead word -2	0.17
lead word -3	-0.10
lead word -4	-0.19
lead word here-after	-0.16
lead word here-before	0.27
lemma be object	-0.19
lemma be subject	0.31
lemma cut object	0.08
lemma go subject	0.13
lemma have subject	0.43
lemma measure subject	0.26
lemma measure subject-late	-0.07
lemma read object	-0.33
lemma read subject	0.15
lemma say subject	-0.11
lemma sit object	0.16
lemma sit subject	0.55
lemma want object	0.11
lemma want subject	-0.12
not-carried	-0.35
not-carried +1 none	-0.08
not-carried +1 own	-0.12
not-carried +1 pointer	-0.21
not-carried +1 tells	-0.18
not-carried -1 own	-0.27
not-carried -1 person	-0.37
not-carried -1 pointer	-0.15
not-carried -1 tells	-0.14
not-carried -2 none	-0.37
not-carried -2 own	-0.10
not-carried -2 pointer	-0.55
not-carried -2 tells	-0.38
not-carried -3 none	-0.13
not-carried -3 own	-0.11
not-carried -3 person	-0.18
not-carried -3 pointer	-0.28
not-carried -3 tells	-0.24
not-carried -4 own	-0.10
not-carried -4 person	-0.18
not-carried -4 pointer	-0.26
not-carried -4 tells	-0.13
not-carried here-after none	0.11
not-carried here-after pointer	-0.06
not-carried here-before none	0.33
not-carried here-before own	0.32
not-carried here-before pointer	0.31
not-carried here-before tells	-0.44
opens-with +1	-0.45
opens-with -1	0.60
opens-with -3	-0.16
opens-with -4	-0.19
part +1 bare	-0.13
part +1 object	-0.14
part +1 opens	-0.23
part +1 subject	-0.16
part +1 subject-late	-0.14
part -1 bare	-0.21
part -1 object	-0.17
part -1 opens	0.30
part -1 subject	0.37
part -1 subject-late	-0.13
part -2 bare	-0.15
part -2 subject	0.11
part -3 bare	-0.22
part -3 object	-0.10
part -3 subject	-0.07
part -3 subject-late	-0.15
part -4 bare	-0.08
part -4 object	-0.11
part -4 subject	-0.15
part -4 subject-late	-0.13
part bare	-0.15
part bare defect	-0.16
part bare fixture	0.08
part bare material	0.07
part bare size	-0.11
part bare surface	-0.24
part bare tells	-0.06
part bare word	-0.15
part bare work	-0.08
part here-after object	-0.10
part here-before bare	0.18
part here-before object	0.16
part here-before opens	0.39
part here-before subject	0.38
part object	-0.24
part object area	-0.16
part object defect	-0.18
part object finish	-0.26
part object part	0.07
part object size	0.18
part object tells	-0.24
part object tool	-0.12
part object verbish	-0.17
part object word	-0.08
part opens	0.19
part opens area	-0.08
part opens finish	-0.08
part opens fixture	0.23
part opens material	0.37
part opens part	0.28
part opens size	0.15
part opens surface	0.08
part opens tells	-0.08
part opens verbish	0.46
part opens word	-0.11
part opens work	-0.10
part subject	0.23
part subject area	-0.19
part subject defect	-0.08
part subject fixture	0.25
part subject material	0.16
part subject part	0.08
part subject size	0.09
part subject surface	0.26
part subject tells	-0.15
part subject tool	-0.23
part subject verbish	0.18
part subject word	0.16
part subject work	-0.16
part subject-late	-0.10
part subject-late area	-0.16
part subject-late defect	-0.16
part subject-late finish	-0.08
part subject-late fixture	0.15
part subject-late material	-0.09
part subject-late part	0.14
part subject-late size	0.42
part subject-late surface	-0.23
part subject-late tool	-0.18
part subject-late verbish	0.08
part subject-late word	-0.20
prep across	-0.12
prep after	-0.40
prep along	-0.27
prep around	-0.32
prep at	-0.23
prep before	-0.23
prep behind	-0.32
prep below	-0.15
prep by	-0.44
prep for	-0.26
prep from	-0.32
prep here-after before	-0.09
prep here-after by	-0.15
prep here-after for	-0.20
prep here-after in	-0.13
prep here-after of	-0.10
prep here-after over	-0.09
prep here-after to	-0.12
prep here-after toward	-0.20
prep here-after with	-0.08
prep here-before at	-0.58
prep here-before by	-0.81
prep here-before for	-0.44
prep here-before from	-0.76
prep here-before in	-0.10
prep here-before of	0.36
prep here-before on	-0.27
prep here-before to	-0.18
prep here-before with	-0.32
prep in	-0.12
prep into	-0.12
prep near	-0.37
prep of	-0.10
prep off	-0.20
prep other above	-0.13
prep other after	-0.42
prep other along	-0.33
prep other around	-0.27
prep other at	-0.18
prep other before	-0.15
prep other behind	-0.40
prep other by	-0.29
prep other for	-0.14
prep other from	-0.20
prep other in	-0.12
prep other into	0.07
prep other of	-0.15
prep other off	-0.19
prep other out	-0.21
prep other over	-0.16
prep other to	-0.21
prep other toward	-0.19
prep other under	-0.39
prep other up	0.25
prep other with	-0.18
prep out	-0.40
prep over	-0.13
prep to	-0.22
prep toward	-0.38
prep under	-0.46
prep up	-0.09
prep with	-0.22
rank after 0	-0.10
rank after 1	-0.09
rank after 2	-0.12
rank after 3	-0.13
rank after 4	-0.18
rank before 0	0.14
rank before 1	0.18
rank before 2	0.08
rank before 3	-0.11
rank before 4	-0.22
says copula	0.12
says modal	-0.07
says past	-0.15
says present	-0.10
sentences -1	-0.40
sentences -1 bare	-0.19
sentences -1 object	-0.09
sentences -1 opens	-0.31
sentences -1 subject	-0.27
sentences -1 subject-late	-0.21
sentences -2	-0.24
sentences -2 bare	-0.09
sentences -2 object	-0.12
sentences -2 opens	-0.11
sentences -2 subject	-0.22
sentences -2 subject-late	-0.08
sentences 1	-0.21
sentences 1 bare	-0.13
sentences 1 opens	-0.23
sentences 1 subject	-0.21
sentences 1 subject-late	-0.14
size 1	-0.15
size 2	0.14
size 3	0.23
stands-off-after	-0.09
subject none +1	-0.18
subject none -1	0.08
subject none -2	-0.07
subject none -3	-0.09
subject none -4	-0.12
subject none here-before	0.39
subject own +1	-0.14
subject own -1	-0.21
subject own -3	-0.13
subject own -4	-0.14
subject own here-after	-0.07
subject own here-before	0.41
subject person +1	-0.16
subject person -1	0.45
subject person -2	-0.38
subject person -3	-0.25
subject person here-after	-0.09
subject person here-before	0.20
subject pointer +1	-0.33
subject pointer -1	0.40
subject pointer -2	0.20
subject pointer -3	-0.11
subject pointer -4	-0.37
subject pointer here-after	-0.17
subject pointer here-before	0.27
subject tells +1	-0.20
subject tells -1	0.41
subject tells -2	0.20
subject tells -3	0.15
subject tells -4	-0.14
subject tells here-before	-0.38
touches-before	0.24
unit area defect	-0.12
unit area material	0.81
unit area surface	0.06
unit area word	-0.35
unit current defect	-0.12
unit current part	0.19
unit current word	-0.07
unit flow part	0.37
unit flow word	-0.13
unit length area	-0.13
unit length defect	-0.15
unit length finish	-0.29
unit length fixture	0.17
unit length material	0.07
unit length part	0.16
unit length size	0.10
unit length tells	-0.12
unit length tool	-0.18
unit length work	-0.12
unit none area	-0.09
unit none defect	-0.17
unit none finish	-0.18
unit none fixture	0.21
unit none material	0.22
unit none part	0.17
unit none size	0.20
unit none surface	0.08
unit none tells	-0.22
unit none tool	-0.26
unit none verbish	-0.11
unit none word	-0.22
unit other part	-0.19
unit other word	-0.11
unit percent defect	-0.29
unit percent finish	0.31
unit percent material	0.24
unit percent part	-0.15
unit percent size	-0.15
unit percent surface	0.36
unit percent tells	-0.42
unit pressure area	-0.11
unit pressure defect	-0.16
unit pressure fixture	0.20
unit pressure material	0.07
unit pressure part	-0.60
unit pressure size	0.33
unit pressure surface	0.32
unit slope material	-0.17
unit slope surface	0.21
unit slope word	0.35
unit temperature material	-0.08
unit temperature size	0.18
unit voltage part	0.58
unit voltage word	-0.08
use buy	-0.14
use move	-0.15
use see	0.35
use use	-0.16
use work	-0.12
where +1	-0.19
where -1	0.10
where -3	-0.11
where -4	-0.17
where here-after	-0.07
where here-before	0.34
whole after at part	0.59
whole after at surface	-0.39
whole after at verbish	0.15
whole after at word	0.45
whole after in word	-0.09
whole after of material	0.77
whole after of word	-0.07
whole after off word	-0.39
whole after on surface	0.37
whole after on tells	-0.07
whole after on word	-0.07
whole after term defect	-0.13
whole after term fixture	0.19
whole after term material	0.14
whole after term part	-0.15
whole after term size	0.69
whole after term surface	-0.13
whole after term word	-0.28
whole after to word	-0.26
whole after word defect	-0.35
whole after word material	-0.22
whole after word part	-0.32
whole after word size	0.43
whole after word surface	-0.15
whole after word tells	-0.09
whole after word verbish	0.11
whole article a	0.09
whole article none	-0.14
whole behind across -1	0.44
whole behind across here-before	0.70
whole behind after -2	-0.21
whole behind at +1	-0.15
whole behind at -1	-0.36
whole behind at -2	-0.13
whole behind at -3	-0.18
whole behind at -4	-0.15
whole behind at here-after	0.44
whole behind at here-before	0.54
whole behind below +1	-0.12
whole behind below -1	0.06
whole behind below here-after	0.39
whole behind below here-before	-0.19
whole behind by +1	-0.19
whole behind by -1	-0.20
whole behind by -2	0.59
whole behind by -3	-0.25
whole behind by -4	0.28
whole behind by here-after	-0.31
whole behind by here-before	0.36
whole behind deep +1	-0.15
whole behind deep -2	-0.31
whole behind deep -3	-0.28
whole behind deep -4	-0.20
whole behind deep here-before	0.21
whole behind down here-before	0.10
whole behind end +1	-0.20
whole behind end -1	0.11
whole behind end -3	-0.09
whole behind end -4	-0.17
whole behind end here-before	0.12
whole behind for -1	0.23
whole behind for -3	-0.12
whole behind for -4	-0.10
whole behind for here-after	-0.54
whole behind from +1	-0.06
whole behind from -1	-0.28
whole behind from -3	-0.12
whole behind from here-after	0.38
whole behind from here-before	0.15
whole behind high +1	-0.14
whole behind high -1	0.46
whole behind high -3	-0.21
whole behind in +1	-0.11
whole behind in -1	0.37
whole behind in -3	-0.11
whole behind in -4	-0.13
whole behind in here-before	0.09
whole behind long -1	-0.07
whole behind long -2	-0.25
whole behind long -3	-0.19
whole behind long here-before	0.44
whole behind of +1	-0.16
whole behind of -1	-0.43
whole behind of -2	-0.08
whole behind of -3	-0.11
whole behind of -4	-0.16
whole behind of here-after	0.57
whole behind of here-before	0.18
whole behind off +1	-0.12
whole behind off -1	-0.15
whole behind off -2	0.12
whole behind off -3	-0.11
whole behind off -4	-0.10
whole behind off here-after	0.14
whole behind off here-before	0.11
whole behind on +1	-0.14
whole behind on -1	-0.26
whole behind on -2	-0.35
whole behind on -3	-0.15
whole behind on -4	-0.17
whole behind on here-before	-0.31
whole behind over +1	-0.17
whole behind over -1	0.07
whole behind over -2	-0.27
whole behind over -3	-0.08
whole behind over -4	-0.08
whole behind over here-after	-0.19
whole behind over here-before	0.14
whole behind quantity -1	-0.07
whole behind quantity -2	-0.29
whole behind quantity here-after	0.15
whole behind short +1	-0.12
whole behind short -1	-0.19
whole behind short -2	-0.14
whole behind short -3	-0.14
whole behind short -4	-0.16
whole behind short here-after	-0.29
whole behind short here-before	0.09
whole behind term +1	-0.11
whole behind term -1	-0.07
whole behind term -2	-0.10
whole behind term -4	-0.16
whole behind term here-after	0.23
whole behind term here-before	0.18
whole behind to +1	-0.19
whole behind to -2	0.08
whole behind to -3	-0.10
whole behind to -4	-0.11
whole behind to here-before	0.15
whole behind toward here-after	-0.54
whole behind under +1	-0.23
whole behind under -1	0.33
whole behind under here-after	0.26
whole behind under here-before	0.34
whole behind up -1	-0.06
whole behind up -4	-0.17
whole behind up here-after	0.85
whole behind up here-before	-0.48
whole behind wide +1	-0.13
whole behind wide -1	-0.21
whole behind wide -2	-0.27
whole behind wide -3	-0.07
whole behind wide here-before	0.08
whole behind with -1	0.23
whole behind with -2	-0.17
whole behind with -4	-0.13
whole behind with here-after	-0.08
whole behind word +1	-0.19
whole behind word -2	0.07
whole behind word -3	-0.07
whole behind word -4	-0.15
whole behind word here-after	-0.15
whole behind word here-before	0.28
whole between 	0.19
whole between about	0.56
whole between and	-0.56
whole between at	0.10
whole between be	0.20
whole between by	0.18
whole between is	0.32
whole between maybe	0.23
whole between measure	-0.25
whole between read	0.28
whole between to	0.07
whole between want	0.30
whole carried	0.26
whole carried -1 none	0.09
whole carried -1 own	0.62
whole carried -1 tells	0.48
whole carried -2 none	0.54
whole carried -2 own	0.56
whole carried -2 pointer	0.09
whole carried -2 tells	0.43
whole carried -3 none	-0.21
whole carried -3 own	0.09
whole carried -3 pointer	-0.09
whole carried -4 none	-0.25
whole carried -4 own	-0.09
whole carried here-before none	0.13
whole carried here-before pointer	0.31
whole counted bare	0.07
whole counted count	-0.13
whole counted current	-0.09
whole counted pack	-0.11
whole counted percent	0.40
whole counted pressure	0.12
whole counted slope	-0.17
whole counted time	0.54
whole far after 0	0.36
whole far after 13+	-0.24
whole far after 3-4	-0.11
whole far after 5-7	-0.14
whole far after 8-12	-0.21
whole far before 0	0.18
whole far before 1	0.15
whole far before 13+	-0.26
whole far before 2	0.15
whole far before 5-7	0.10
whole flawed	-0.11
whole frame copula +1	-0.21
whole frame copula -1	-0.08
whole frame copula -2	-0.07
whole frame copula -3	-0.11
whole frame copula -4	-0.19
whole frame copula here-after	0.10
whole frame copula here-before	0.20
whole frame imperative +1	-0.17
whole frame imperative -1	0.29
whole frame imperative -2	-0.14
whole frame imperative -3	-0.16
whole frame imperative -4	0.14
whole frame imperative here-before	0.22
whole frame modal +1	-0.17
whole frame modal -1	0.52
whole frame modal -2	-0.17
whole frame modal -3	-0.14
whole frame modal -4	-0.28
whole frame modal here-after	0.22
whole frame modal here-before	0.48
whole frame none +1	-0.19
whole frame none -3	-0.11
whole frame none -4	-0.22
whole frame none here-after	0.11
whole frame none here-before	0.07
whole frame owed +1	-0.08
whole frame owed -1	-0.19
whole frame owed -2	-0.08
whole frame owed -3	-0.19
whole frame owed -4	0.19
whole frame owed here-after	-0.34
whole frame owed here-before	0.37
whole frame past +1	-0.18
whole frame past -3	-0.23
whole frame past -4	-0.18
whole frame past here-after	0.10
whole frame past here-before	0.17
whole frame present +1	-0.21
whole frame present -1	0.07
whole frame present -2	0.11
whole frame present -4	-0.23
whole frame present here-after	0.36
whole frame present here-before	0.32
whole heading	-0.08
whole heading +1	-0.17
whole heading -1	-0.17
whole heading -2	-0.11
whole heading -3	0.26
whole heading -4	-0.09
whole kind +1 area	-0.07
whole kind +1 defect	-0.17
whole kind +1 finish	-0.10
whole kind +1 fixture	-0.15
whole kind +1 material	-0.13
whole kind +1 part	-0.17
whole kind +1 size	-0.11
whole kind +1 surface	-0.17
whole kind +1 tells	-0.12
whole kind +1 tool	-0.08
whole kind +1 verbish	-0.09
whole kind +1 word	-0.14
whole kind -1 defect	-0.26
whole kind -1 finish	-0.15
whole kind -1 fixture	0.21
whole kind -1 material	0.08
whole kind -1 part	0.25
whole kind -1 tells	-0.13
whole kind -1 verbish	-0.18
whole kind -1 word	-0.14
whole kind -2 area	-0.23
whole kind -2 finish	-0.17
whole kind -2 fixture	0.44
whole kind -2 part	0.07
whole kind -2 size	-0.17
whole kind -2 surface	-0.13
whole kind -2 tells	-0.06
whole kind -2 tool	-0.14
whole kind -2 verbish	0.07
whole kind -2 word	-0.06
whole kind -2 work	-0.23
whole kind -3 defect	-0.15
whole kind -3 fixture	-0.18
whole kind -3 material	-0.11
whole kind -3 part	-0.12
whole kind -3 size	-0.22
whole kind -3 tool	-0.10
whole kind -3 verbish	-0.10
whole kind -3 work	-0.16
whole kind -4 defect	-0.08
whole kind -4 finish	-0.09
whole kind -4 fixture	0.06
whole kind -4 material	-0.10
whole kind -4 part	-0.13
whole kind -4 size	-0.13
whole kind -4 surface	-0.15
whole kind -4 tells	-0.07
whole kind -4 tool	-0.11
whole kind -4 verbish	-0.07
whole kind -4 word	-0.09
whole kind area	-0.09
whole kind finish	-0.16
whole kind fixture	0.09
whole kind here-after area	-0.24
whole kind here-after defect	-0.16
whole kind here-after finish	-0.24
whole kind here-after material	0.42
whole kind here-after part	-0.13
whole kind here-after size	0.53
whole kind here-after surface	0.30
whole kind here-after tells	-0.14
whole kind here-after tool	0.25
whole kind here-after verbish	0.19
whole kind here-after word	-0.09
whole kind here-before area	-0.32
whole kind here-before defect	0.65
whole kind here-before part	0.14
whole kind here-before size	0.10
whole kind here-before surface	0.32
whole kind here-before tells	0.12
whole kind here-before tool	-0.28
whole kind here-before word	0.11
whole kind tells	-0.06
whole kind tool	-0.08
whole kind word	-0.12
whole kind work	-0.18
whole lead a -2	0.11
whole lead a -3	-0.20
whole lead a -4	-0.14
whole lead a here-after	0.85
whole lead a here-before	-0.15
whole lead about -3	-0.11
whole lead about -4	-0.20
whole lead about here-before	0.48
whole lead at -2	-0.12
whole lead at -3	-0.15
whole lead at -4	-0.25
whole lead at here-after	-0.12
whole lead at here-before	0.18
whole lead by -1	-0.14
whole lead by -2	0.29
whole lead by -3	-0.16
whole lead by -4	0.13
whole lead by here-after	-0.27
whole lead by here-before	0.16
whole lead defect -1	-0.10
whole lead defect -2	-0.07
whole lead defect -3	-0.10
whole lead defect -4	-0.07
whole lead defect here-after	0.14
whole lead defect here-before	0.49
whole lead fixture -1	-0.22
whole lead fixture -2	-0.25
whole lead fixture -3	-0.23
whole lead fixture -4	-0.13
whole lead fixture here-after	-0.50
whole lead fixture here-before	0.64
whole lead for -1	0.47
whole lead for -4	-0.12
whole lead for here-before	0.44
whole lead in -1	0.23
whole lead in -2	-0.13
whole lead in -4	-0.15
whole lead in here-before	0.26
whole lead mark -2	-0.13
whole lead mark here-before	0.09
whole lead material -1	0.08
whole lead material -2	-0.07
whole lead material -3	0.16
whole lead material -4	-0.13
whole lead material here-after	0.25
whole lead material here-before	-0.19
whole lead of -2	-0.15
whole lead out -1	-0.37
whole lead out -2	-0.22
whole lead out -4	-0.07
whole lead over -1	0.37
whole lead over -2	-0.18
whole lead over -3	0.35
whole lead over -4	-0.07
whole lead over here-before	0.07
whole lead part -1	-0.15
whole lead part -2	0.10
whole lead part -3	-0.19
whole lead part -4	-0.34
whole lead part here-after	-0.74
whole lead part here-before	0.09
whole lead size -1	-0.40
whole lead size -2	0.10
whole lead size -3	0.09
whole lead size -4	-0.18
whole lead size here-before	0.08
whole lead surface -1	-0.19
whole lead surface -2	-0.24
whole lead surface -3	-0.27
whole lead surface -4	-0.14
whole lead surface here-after	-0.13
whole lead surface here-before	0.32
whole lead to -1	-0.24
whole lead to -2	0.42
whole lead to -3	-0.11
whole lead to -4	-0.23
whole lead to here-after	-0.31
whole lead to here-before	0.54
whole lead up -1	-0.23
whole lead up -2	0.29
whole lead up -3	-0.11
whole lead up here-before	0.22
whole lead verbish -1	0.20
whole lead verbish -2	-0.07
whole lead verbish -3	-0.23
whole lead verbish -4	-0.18
whole lead verbish here-after	0.44
whole lead word -1	-0.11
whole lead word -3	-0.14
whole lead word -4	-0.09
whole lead word here-after	0.16
whole lead word here-before	0.25
whole lemma be subject-late	0.29
whole lemma get object	0.60
whole lemma go object	-0.26
whole lemma have object	0.54
whole lemma measure object	0.46
whole lemma measure subject	-0.06
whole lemma read object	0.10
whole lemma say subject	0.32
whole lemma sit object	-0.24
whole lemma sit subject	0.09
whole lemma want object	0.16
whole lemma want subject	0.39
whole not-carried	-0.28
whole not-carried +1 none	-0.15
whole not-carried +1 own	-0.14
whole not-carried +1 pointer	-0.20
whole not-carried +1 tells	-0.13
whole not-carried -1 none	-0.07
whole not-carried -1 own	-0.30
whole not-carried -1 person	-0.22
whole not-carried -1 pointer	0.10
whole not-carried -1 tells	-0.10
whole not-carried -2 none	-0.22
whole not-carried -2 own	-0.21
whole not-carried -2 pointer	-0.29
whole not-carried -2 tells	-0.34
whole not-carried -3 none	-0.08
whole not-carried -3 own	-0.18
whole not-carried -3 person	-0.10
whole not-carried -3 pointer	-0.21
whole not-carried -3 tells	-0.15
whole not-carried -4 none	-0.18
whole not-carried -4 own	-0.11
whole not-carried -4 person	-0.23
whole not-carried -4 pointer	-0.21
whole not-carried -4 tells	-0.11
whole not-carried here-after none	0.28
whole not-carried here-after own	0.27
whole not-carried here-after pointer	0.49
whole not-carried here-before own	0.13
whole not-carried here-before person	0.43
whole not-carried here-before pointer	0.30
whole not-carried here-before tells	0.36
whole opens-with +1	-0.17
whole opens-with -4	-0.19
whole opens-with here-after	0.47
whole part +1 bare	-0.15
whole part +1 object	-0.15
whole part +1 opens	-0.19
whole part +1 subject	-0.15
whole part +1 subject-late	-0.15
whole part -1 bare	0.07
whole part -1 object	-0.10
whole part -1 subject	0.10
whole part -1 subject-late	-0.13
whole part -2 bare	-0.14
whole part -2 subject	-0.08
whole part -2 subject-late	0.30
whole part -3 bare	-0.16
whole part -3 object	-0.14
whole part -3 subject	-0.07
whole part -3 subject-late	-0.16
whole part -4 object	-0.15
whole part -4 opens	-0.11
whole part bare area	0.11
whole part bare defect	-0.16
whole part bare finish	0.08
whole part bare fixture	0.25
whole part bare material	-0.06
whole part bare part	-0.08
whole part bare size	0.25
whole part bare surface	0.12
whole part bare tells	-0.22
whole part bare verbish	0.10
whole part bare word	-0.19
whole part bare work	-0.07
whole part here-after bare	0.11
whole part here-after object	0.09
whole part here-after subject-late	0.12
whole part here-before bare	0.16
whole part here-before object	0.43
whole part here-before subject-late	0.23
whole part object	-0.07
whole part object area	-0.19
whole part object finish	-0.17
whole part object part	-0.08
whole part object size	0.12
whole part object surface	0.10
whole part object tells	-0.25
whole part object tool	-0.11
whole part object verbish	-0.06
whole part opens	-0.07
whole part opens defect	0.21
whole part opens finish	-0.15
whole part opens material	-0.09
whole part opens part	0.11
whole part opens size	-0.11
whole part opens surface	-0.14
whole part opens tells	0.06
whole part opens verbish	-0.13
whole part opens word	-0.11
whole part opens work	-0.21
whole part subject area	-0.16
whole part subject defect	-0.17
whole part subject fixture	0.06
whole part subject tells	0.09
whole part subject tool	0.08
whole part subject verbish	-0.10
whole part subject work	-0.11
whole part subject-late area	-0.20
whole part subject-late defect	-0.55
whole part subject-late fixture	0.27
whole part subject-late material	0.21
whole part subject-late part	0.46
whole part subject-late size	0.14
whole part subject-late surface	0.13
whole part subject-late tool	-0.06
whole part subject-late verbish	0.11
whole part subject-late word	-0.26
whole prep above	0.27
whole prep after	-0.20
whole prep along	0.14
whole prep at	-0.06
whole prep before	-0.21
whole prep below	0.48
whole prep by	-0.37
whole prep from	-0.10
whole prep here-after above	0.27
whole prep here-after at	0.35
whole prep here-after before	-0.15
whole prep here-after below	0.40
whole prep here-after by	-0.34
whole prep here-after for	-0.40
whole prep here-after from	0.16
whole prep here-after in	-0.27
whole prep here-after of	0.37
whole prep here-after off	0.23
whole prep here-after on	-0.06
whole prep here-after to	-0.31
whole prep here-after toward	-0.52
whole prep here-after with	-0.22
whole prep here-before at	-0.27
whole prep here-before by	-0.53
whole prep here-before of	-0.19
whole prep here-before over	0.11
whole prep here-before to	0.23
whole prep here-before with	0.17
whole prep in	-0.09
whole prep into	0.08
whole prep near	-0.22
whole prep on	-0.09
whole prep other above	-0.06
whole prep other across	-0.06
whole prep other along	-0.33
whole prep other around	0.07
whole prep other at	-0.11
whole prep other before	-0.13
whole prep other behind	-0.18
whole prep other by	-0.22
whole prep other for	0.07
whole prep other from	-0.21
whole prep other in	-0.07
whole prep other into	0.24
whole prep other of	-0.14
whole prep other off	-0.21
whole prep other on	-0.11
whole prep other out	-0.13
whole prep other over	-0.26
whole prep other toward	-0.18
whole prep other up	0.09
whole prep other with	-0.07
whole prep over	-0.15
whole prep to	-0.06
whole prep toward	-0.52
whole prep under	0.17
whole prep up	-0.10
whole prep with	-0.07
whole rank after 1	-0.15
whole rank after 2	-0.13
whole rank after 3	-0.10
whole rank after 4	-0.11
whole rank before 0	0.13
whole rank before 2	0.06
whole rank before 3	-0.11
whole rank before 4	-0.22
whole says none	-0.08
whole says owed	-0.12
whole says past	-0.10
whole sentences -1	-0.29
whole sentences -1 bare	-0.22
whole sentences -1 object	-0.18
whole sentences -1 opens	-0.15
whole sentences -1 subject	-0.17
whole sentences -1 subject-late	0.07
whole sentences -2	-0.25
whole sentences -2 bare	-0.14
whole sentences -2 object	-0.13
whole sentences -2 opens	-0.10
whole sentences -2 subject	-0.18
whole sentences -2 subject-late	-0.13
whole sentences 1	-0.23
whole sentences 1 bare	-0.16
whole sentences 1 object	-0.09
whole sentences 1 opens	-0.23
whole sentences 1 subject	-0.18
whole sentences 1 subject-late	-0.11
whole size 2	-0.14
whole size 3	-0.09
whole subject none +1	-0.18
whole subject none -3	-0.11
whole subject none -4	-0.16
whole subject none here-after	0.17
whole subject none here-before	0.12
whole subject own +1	-0.22
whole subject own -1	-0.08
whole subject own -2	-0.06
whole subject own -3	-0.12
whole subject own -4	-0.17
whole subject own here-before	0.18
whole subject person +1	-0.07
whole subject person -1	0.08
whole subject person -2	-0.26
whole subject person -3	-0.16
whole subject person -4	0.46
whole subject person here-after	-0.51
whole subject person here-before	0.27
whole subject pointer +1	-0.20
whole subject pointer -2	0.11
whole subject pointer -3	-0.17
whole subject pointer -4	-0.26
whole subject pointer here-after	0.25
whole subject pointer here-before	0.36
whole subject tells +1	-0.14
whole subject tells -1	0.20
whole subject tells -2	-0.14
whole subject tells -4	-0.12
whole subject tells here-before	0.38
whole touches-after	0.38
whole touches-before	0.19
whole unit area defect	0.07
whole unit area material	0.26
whole unit area surface	0.06
whole unit area word	-0.08
whole unit current defect	-0.28
whole unit current part	0.13
whole unit current word	-0.10
whole unit flow part	-0.26
whole unit flow word	-0.46
whole unit length area	-0.08
whole unit length finish	-0.21
whole unit length fixture	0.14
whole unit length tells	-0.21
whole unit length tool	-0.07
whole unit length word	-0.13
whole unit length work	-0.15
whole unit none area	-0.08
whole unit none defect	-0.17
whole unit none finish	-0.13
whole unit none material	-0.10
whole unit none part	-0.07
whole unit none surface	0.30
whole unit none tells	0.25
whole unit none tool	-0.15
whole unit none verbish	-0.06
whole unit other word	-0.09
whole unit percent defect	-0.13
whole unit percent finish	0.21
whole unit percent fixture	-0.18
whole unit percent material	-0.23
whole unit percent part	-0.15
whole unit percent surface	0.28
whole unit percent tells	-0.51
whole unit percent word	-0.16
whole unit pressure area	-0.15
whole unit pressure defect	-0.15
whole unit pressure fixture	-0.13
whole unit pressure material	0.11
whole unit pressure part	-0.10
whole unit pressure size	0.08
whole unit pressure surface	-0.34
whole unit pressure word	-0.32
whole unit slope material	-0.20
whole unit slope surface	-0.23
whole unit temperature area	-0.07
whole unit temperature defect	-0.13
whole unit temperature material	-0.13
whole unit temperature size	-0.18
whole unit voltage part	0.70
whole unit voltage word	-0.12
whole use have	0.17
whole use move	-0.20
whole use use	-0.26
whole use work	-0.09
whole where +1	-0.20
whole where -3	-0.13
whole where -4	-0.16
whole where here-after	0.10
whole where here-before	0.20`;

export const FLAW = `after about defect	-0.06
after at defect	-0.17
after at fixture	0.06
after at material	0.20
after at part	-0.10
after at surface	0.35
after at word	-0.25
after behind defect	-0.10
after behind fixture	-0.29
after by defect	-0.38
after by fixture	0.37
after down defect	-0.11
after end defect	-0.19
after for defect	-0.17
after from defect	0.20
after in area	-0.24
after in defect	0.20
after in material	0.46
after in word	0.24
after mark defect	-0.08
after on defect	-0.38
after on material	0.62
after on surface	0.45
after on word	-0.23
after out material	-0.12
after quantity defect	-0.24
after quantity fixture	0.46
after quantity material	0.74
after quantity part	0.48
after quantity size	0.46
after quantity surface	-0.48
after quantity verbish	-0.25
after term area	0.11
after term finish	-0.20
after term fixture	0.16
after term material	0.08
after term part	0.48
after term size	0.09
after term surface	0.08
after term verbish	0.31
after term word	-0.10
after word area	0.32
after word defect	-0.22
after word finish	-0.38
after word fixture	0.31
after word material	0.42
after word part	0.37
after word surface	0.66
after word tells	-0.16
after word tool	-0.13
article a	-0.13
article none	-0.12
article other	-0.17
article the	0.28
behind about +1	-0.07
behind about -1	-0.24
behind about -2	-0.09
behind about -4	-0.16
behind about here-after	-0.11
behind about here-before	0.54
behind at +1	-0.19
behind at -1	0.07
behind at -2	-0.29
behind at -3	-0.11
behind at -4	-0.22
behind at here-before	0.52
behind behind +1	-0.08
behind behind -1	0.32
behind behind -2	-0.19
behind behind -3	-0.08
behind behind here-after	0.18
behind behind here-before	-0.29
behind by +1	-0.21
behind by -1	-0.32
behind by -2	-0.33
behind by -3	-0.27
behind by -4	0.28
behind by here-after	0.20
behind by here-before	0.48
behind down +1	-0.23
behind down -1	-0.38
behind down here-after	0.45
behind down here-before	0.13
behind end +1	-0.13
behind end -1	0.09
behind end -4	-0.12
behind end here-after	-0.19
behind end here-before	0.27
behind for -1	0.67
behind for -3	-0.23
behind for here-after	-0.73
behind for here-before	0.40
behind from +1	-0.33
behind from -1	-0.12
behind from -2	-0.18
behind from -3	0.27
behind from -4	-0.15
behind from here-after	0.10
behind from here-before	0.27
behind in +1	-0.08
behind in -1	0.17
behind in -3	-0.22
behind in -4	-0.24
behind in here-after	0.21
behind mark +1	-0.06
behind mark -1	-0.19
behind mark -2	0.22
behind mark -4	-0.07
behind mark here-after	-0.22
behind mark here-before	0.32
behind number -2	-0.30
behind number here-after	0.58
behind of -2	0.20
behind of here-after	0.10
behind off +1	-0.12
behind off -1	-0.27
behind off -2	-0.19
behind off -3	-0.41
behind off -4	0.19
behind off here-after	0.36
behind off here-before	0.19
behind on +1	-0.20
behind on -2	-0.09
behind on -4	-0.23
behind on here-after	0.13
behind on here-before	0.29
behind out +1	-0.10
behind out -1	0.13
behind out -3	-0.16
behind out -4	-0.13
behind out here-after	-0.12
behind out here-before	0.35
behind quantity +1	-0.10
behind quantity -2	0.06
behind quantity -3	-0.25
behind quantity -4	-0.36
behind quantity here-after	0.22
behind quantity here-before	0.31
behind term +1	-0.24
behind term -1	-0.21
behind term -3	-0.21
behind term -4	-0.27
behind term here-after	0.28
behind term here-before	0.76
behind to +1	-0.18
behind to here-after	-0.58
behind to here-before	0.59
behind under here-after	-0.69
behind up +1	-0.08
behind up -1	-0.44
behind up -2	-0.21
behind up here-after	0.46
behind up here-before	0.39
behind with +1	-0.23
behind with -2	-0.20
behind with here-after	-0.22
behind with here-before	0.49
behind word +1	-0.18
behind word -1	-0.12
behind word -2	-0.06
behind word -4	-0.08
behind word here-after	0.21
behind word here-before	0.23
between 	0.21
between are	0.44
between be	-0.09
between get a	0.12
between has	-0.12
between has a	0.34
between is	0.18
between were	0.46
counted bare	0.16
counted count	0.19
counted pack	-0.17
counted pressure	-0.31
counted time	-0.08
counted voltage	-0.23
counted volume	-0.22
far after 1	0.22
far after 13+	-0.06
far after 5-7	-0.11
far after 8-12	-0.09
far before 0	0.21
far before 13+	-0.22
far before 2	0.20
far before 3-4	0.21
far before 8-12	-0.07
figure-between	-0.19
flawed	0.07
frame copula -3	-0.06
frame copula -4	-0.12
frame copula here-before	0.22
frame imperative +1	0.20
frame imperative -1	-0.11
frame imperative -2	0.24
frame imperative -3	-0.35
frame imperative -4	-0.51
frame imperative here-after	0.08
frame imperative here-before	0.43
frame modal +1	-0.15
frame modal -1	-0.42
frame modal -2	0.36
frame modal -3	0.27
frame modal -4	-0.53
frame modal here-after	0.50
frame modal here-before	-0.10
frame none +1	-0.33
frame none -1	0.08
frame none -2	-0.16
frame none -3	-0.11
frame none -4	-0.08
frame none here-after	0.14
frame none here-before	0.40
frame owed +1	-0.17
frame owed -1	-0.49
frame owed -2	-0.34
frame owed -3	-0.32
frame owed -4	-0.39
frame owed here-after	0.71
frame owed here-before	0.53
frame past +1	-0.22
frame past -1	-0.12
frame past -2	-0.08
frame past -4	-0.20
frame past here-after	0.21
frame past here-before	0.37
frame present +1	-0.27
frame present -1	0.22
frame present -2	-0.08
frame present -3	-0.09
frame present -4	-0.18
frame present here-after	-0.08
frame present here-before	0.38
heading	0.07
heading -1	-0.12
heading -2	0.38
heading -3	0.19
heading -4	-0.09
heading here-before	0.40
join	-0.28
join +1	-0.13
join +1 finish	-0.06
join -1 area	0.08
join -1 finish	-0.07
join -1 fixture	0.14
join -1 size	-0.08
join -2 area	-0.06
join -2 fixture	0.07
join -2 material	-0.06
join -2 tool	-0.06
join -3	-0.20
join -3 finish	-0.07
join -3 fixture	-0.10
join -3 material	-0.07
join -3 part	-0.07
join -3 size	-0.07
join -3 surface	-0.08
join -3 tool	-0.07
join -3 word	-0.07
join -3 work	-0.09
join area+tool	-0.07
join defect	-0.07
join finish	-0.07
join fixture+tells	0.08
join leads along	-0.11
join leads at word	0.16
join leads at word verb	-0.11
join leads at word word	-0.21
join leads by	0.17
join leads by term quantity	0.16
join leads for word	0.15
join leads from	0.09
join leads into word at	0.07
join leads near	0.07
join leads of word verb	-0.10
join leads off	0.11
join leads on term verb	0.09
join leads quantity of	-0.24
join leads quantity of word	0.18
join leads term quantity at	-0.07
join leads term verb	-0.13
join leads verb in	0.06
join leads verb off	0.30
join leads verb on	-0.10
join leads verb quantity of	-0.16
join leads verb under	0.24
join leads verb verb at	-0.06
join leads verb with	0.27
join leads word quantity word	-0.09
join leads word term at	0.08
join leads word term verb	0.18
join leads word verb at	-0.07
join leads word verb word	-0.07
join leads word word quantity	-0.08
join leads word word word	-0.06
join links along	-0.41
join links around	0.07
join links at	0.12
join links at quantity word	-0.08
join links at word	0.13
join links at word term	-0.06
join links at word verb	-0.16
join links at word word	-0.15
join links behind	0.16
join links by	0.30
join links by term quantity	0.11
join links for	0.15
join links for word	0.10
join links from	0.11
join links in	0.21
join links in term verb	-0.07
join links in verb behind	0.13
join links in word word	-0.07
join links into word at	0.07
join links near	0.39
join links of	0.12
join links of word verb	-0.09
join links on	0.17
join links on term verb	0.51
join links on word	0.10
join links over	0.27
join links quantity at	-0.20
join links quantity from	-0.13
join links quantity mark	-0.08
join links quantity of	-0.11
join links quantity of word	0.09
join links term	-0.06
join links term word	-0.09
join links term word word	-0.07
join links to	0.08
join links to term word	-0.06
join links under	0.16
join links verb at	-0.11
join links verb at quantity	-0.14
join links verb behind	-0.22
join links verb by	-0.19
join links verb from	-0.07
join links verb mark	0.40
join links verb off	0.11
join links verb on	0.16
join links verb out quantity	-0.13
join links verb term word	-0.26
join links verb under	0.31
join links verb verb	-0.09
join links verb verb at	-0.09
join links verb verb on	-0.08
join links verb verb out	-0.06
join links verb verb quantity	0.08
join links verb verb word	0.18
join links verb word term	-0.13
join links verb word word	-0.09
join links word in verb	0.16
join links word quantity of	-0.10
join links word quantity on	0.10
join links word quantity word	-0.21
join links word term at	0.51
join links word term word	0.13
join links word verb	-0.07
join links word verb about	-0.07
join links word verb at	-0.18
join links word verb on	0.15
join links word verb quantity	-0.12
join links word verb verb	-0.16
join links word verb word	0.09
join links word word	-0.06
join links word word word	0.11
join material	-0.12
join material+area	-0.06
join material+defect	-0.08
join material+fixture	0.13
join material+material	-0.08
join material+part	-0.07
join material+tells	-0.07
join material+tool	-0.06
join material+work	-0.08
join part	-0.15
join part+part	-0.11
join part+tool	-0.07
join same-after area	0.08
join same-after defect	-0.10
join same-after fixture	0.19
join same-after part	0.10
join same-after size	0.07
join same-after surface	0.11
join same-after tells	-0.08
join size 1	-0.06
join size 2	-0.25
join size 3	-0.16
join size+area	0.12
join size+finish	-0.10
join size+tells	-0.08
join size+verbish	0.09
join size+word	-0.06
join sizes 1+2	-0.11
join sizes 1+3	-0.13
join sizes 2+1	-0.21
join sizes 2+3	-0.11
join sizes 3+1	-0.11
join sizes 3+2	-0.08
join surface	0.07
join surface+area	0.15
join surface+fixture	0.13
join surface+part	0.08
join surface+surface	0.07
join tells+fixture	0.34
join tool+surface	-0.08
join tool+verbish	0.16
join verbish	-0.08
join verbish+tool	0.07
join work	0.07
join work+area	0.08
join work+fixture	0.19
kind +1 area	-0.18
kind +1 defect	-0.09
kind +1 finish	-0.13
kind +1 fixture	0.06
kind +1 material	-0.10
kind +1 part	-0.06
kind +1 size	-0.22
kind +1 surface	-0.11
kind +1 tells	-0.15
kind +1 tool	-0.12
kind +1 verbish	-0.23
kind +1 word	-0.14
kind -1 defect	-0.17
kind -1 finish	-0.35
kind -1 fixture	0.14
kind -1 part	0.12
kind -1 size	0.08
kind -1 surface	0.07
kind -1 tells	-0.29
kind -2 area	-0.18
kind -2 defect	-0.17
kind -2 finish	-0.28
kind -2 fixture	0.07
kind -2 size	-0.18
kind -2 surface	0.15
kind -2 tells	0.14
kind -2 tool	-0.36
kind -2 word	-0.08
kind -2 work	-0.16
kind -3 defect	-0.08
kind -3 fixture	0.10
kind -3 material	-0.07
kind -3 size	-0.17
kind -3 surface	-0.14
kind -3 tells	-0.07
kind -3 tool	-0.15
kind -3 verbish	-0.13
kind -3 word	-0.10
kind -3 work	-0.08
kind -4 finish	-0.08
kind -4 fixture	-0.08
kind -4 material	-0.07
kind -4 part	-0.17
kind -4 size	-0.12
kind -4 surface	-0.15
kind -4 tool	-0.17
kind -4 verbish	0.08
kind -4 word	-0.07
kind -4 work	-0.08
kind defect	-0.21
kind finish	-0.21
kind fixture	0.16
kind here-after area	0.39
kind here-after defect	-0.21
kind here-after finish	-0.13
kind here-after fixture	0.20
kind here-after material	0.38
kind here-after part	0.43
kind here-after size	0.47
kind here-after surface	0.38
kind here-after tells	-0.27
kind here-after tool	-0.16
kind here-before area	-0.17
kind here-before defect	0.40
kind here-before finish	-0.06
kind here-before fixture	0.33
kind here-before material	0.47
kind here-before part	0.46
kind here-before size	0.15
kind here-before surface	0.17
kind here-before tool	0.49
kind here-before verbish	-0.28
kind here-before word	-0.22
kind material	0.11
kind part	0.23
kind surface	0.07
kind tells	-0.15
kind tool	-0.09
kind word	-0.15
kind work	-0.14
lead a -1	-0.07
lead a -2	-0.35
lead a -3	-0.06
lead a here-after	0.26
lead a here-before	0.32
lead area -1	-0.27
lead area -2	0.20
lead area -3	-0.12
lead area -4	-0.14
lead area here-after	0.35
lead area here-before	-0.07
lead fixture -1	-0.13
lead fixture -2	-0.08
lead fixture -3	-0.10
lead fixture here-after	-0.18
lead fixture here-before	0.40
lead material -1	0.11
lead material -2	-0.12
lead material -3	-0.09
lead material -4	-0.11
lead material here-after	-0.19
lead material here-before	0.29
lead number -1	0.39
lead number -2	0.51
lead number -4	-0.31
lead number here-after	-0.40
lead number here-before	-0.14
lead part -1	-0.16
lead part -2	-0.11
lead part -3	-0.12
lead part -4	-0.06
lead part here-after	-0.08
lead part here-before	0.36
lead quantity -1	0.43
lead quantity -2	-0.08
lead quantity -3	-0.10
lead quantity -4	-0.18
lead quantity here-after	-0.22
lead quantity here-before	0.75
lead role -1	-0.81
lead role here-after	0.78
lead size -1	-0.40
lead size here-after	0.38
lead surface -2	-0.12
lead surface -3	-0.13
lead surface -4	-0.11
lead surface here-after	-0.11
lead surface here-before	0.34
lead that here-after	0.22
lead the -2	-0.38
lead the -3	-0.15
lead the -4	-0.30
lead the here-after	0.72
lead the here-before	-0.26
lead tool here-after	-0.57
lead tool here-before	0.41
lead verbish -1	0.17
lead verbish -2	-0.19
lead verbish -3	0.13
lead verbish -4	-0.11
lead verbish here-after	-0.25
lead verbish here-before	0.31
lead word -2	0.11
lead word -3	-0.07
lead word -4	-0.25
lead word here-after	0.09
lead word here-before	0.28
lemma be object	-0.18
lemma be subject	0.41
lemma be subject-late	-0.08
lemma crack subject	0.33
lemma drip object	-0.24
lemma drip subject	0.27
lemma find object	0.74
lemma get subject	0.69
lemma go object	0.32
lemma go subject	0.14
lemma have object	-0.08
lemma have subject	0.33
lemma have subject-late	-0.15
lemma hum subject	0.25
lemma leave object	0.35
lemma pull object	0.16
lemma run object	0.19
lemma run subject	0.12
lemma say object	1.21
lemma sit object	-0.09
lemma sit subject	0.52
lemma stick subject	0.28
lemma turn subject	-0.30
lemma weep subject	0.23
not-told	-0.32
not-told +1	-0.12
not-told -1	0.06
not-told -2	-0.13
not-told -4	-0.09
not-told here-after	-0.19
not-told here-before	0.43
opens-with -1	-0.10
opens-with -2	-0.14
opens-with -3	-0.16
opens-with -4	-0.23
opens-with here-after	0.42
part +1 bare	-0.06
part +1 object	-0.18
part +1 subject	-0.09
part +1 subject-late	-0.19
part -1 bare	-0.10
part -1 subject-late	-0.08
part -2 bare	-0.28
part -2 object	-0.09
part -2 opens	0.10
part -2 subject-late	-0.13
part -3 object	-0.07
part -3 subject	-0.08
part -3 subject-late	-0.18
part -4 object	-0.18
part -4 opens	-0.14
part -4 subject-late	-0.07
part bare	-0.17
part bare area	-0.14
part bare defect	-0.14
part bare fixture	-0.07
part bare material	-0.07
part bare part	0.38
part bare size	0.07
part bare surface	-0.13
part bare verbish	0.16
part bare word	-0.24
part here-after bare	-0.14
part here-after opens	0.69
part here-after subject	0.84
part here-before object	0.26
part here-before opens	0.44
part here-before subject	0.27
part here-before subject-late	0.08
part object	-0.16
part object defect	-0.21
part object finish	-0.32
part object fixture	0.19
part object part	0.20
part object tells	-0.19
part object tool	-0.20
part object verbish	-0.13
part object word	-0.11
part object work	-0.13
part opens	0.18
part opens defect	-0.22
part opens finish	0.12
part opens fixture	0.27
part opens material	0.15
part opens part	0.13
part opens size	0.06
part opens surface	0.34
part opens tells	0.27
part opens tool	-0.40
part opens verbish	0.35
part opens work	0.10
part subject	0.17
part subject area	0.36
part subject defect	-0.20
part subject finish	0.17
part subject fixture	0.18
part subject material	0.18
part subject part	0.15
part subject surface	0.12
part subject tells	-0.29
part subject tool	0.56
part subject verbish	-0.12
part subject word	-0.08
part subject work	-0.17
part subject-late area	-0.24
part subject-late defect	0.24
part subject-late fixture	-0.12
part subject-late material	0.27
part subject-late part	-0.16
part subject-late size	0.08
part subject-late verbish	0.21
part subject-late word	-0.08
prep about	-0.11
prep above	0.13
prep across	-0.26
prep after	-0.49
prep along	0.49
prep around	0.40
prep at	-0.20
prep before	-0.22
prep behind	-0.28
prep below	-0.50
prep by	-0.36
prep down	0.59
prep for	-0.14
prep from	-0.24
prep here-after at	-0.21
prep here-after behind	-0.43
prep here-after below	-0.55
prep here-after by	-0.21
prep here-after down	0.33
prep here-after for	-0.28
prep here-after from	-0.13
prep here-after in	0.34
prep here-after of	-0.11
prep here-after off	0.88
prep here-after on	0.18
prep here-after out	-0.25
prep here-after over	-0.17
prep here-after to	-0.61
prep here-after under	-0.32
prep here-after with	-0.37
prep here-before at	-0.19
prep here-before by	-0.79
prep here-before for	0.06
prep here-before in	-0.36
prep here-before of	-0.07
prep here-before on	-0.15
prep here-before over	-0.46
prep here-before to	-0.30
prep here-before under	-0.49
prep here-before with	-0.24
prep in	-0.09
prep near	-0.37
prep of	-0.15
prep off	0.09
prep on	-0.09
prep other after	-0.07
prep other along	0.17
prep other around	-0.10
prep other at	-0.14
prep other before	-0.17
prep other below	-0.10
prep other by	-0.22
prep other down	0.46
prep other for	-0.12
prep other from	-0.28
prep other in	-0.16
prep other into	0.20
prep other of	-0.14
prep other off	-0.13
prep other on	-0.15
prep other out	-0.15
prep other over	-0.13
prep other to	-0.17
prep other toward	-0.21
prep other under	-0.06
prep other up	-0.17
prep other with	-0.08
prep over	-0.28
prep to	-0.26
prep toward	-0.59
prep under	-0.35
prep with	-0.16
prep without	-0.42
rank after 2	-0.07
rank after 3	-0.15
rank after 4	0.14
rank before 0	0.18
rank before 1	0.09
rank before 2	-0.10
rank before 3	-0.08
rank before 4	-0.14
says imperative	0.11
sentences -1	-0.31
sentences -1 bare	-0.13
sentences -1 object	-0.16
sentences -1 opens	-0.21
sentences -1 subject	-0.17
sentences -1 subject-late	-0.20
sentences -2	-0.21
sentences -2 bare	-0.15
sentences -2 object	-0.13
sentences -2 opens	-0.17
sentences -2 subject-late	-0.07
sentences 1	-0.33
sentences 1 bare	-0.32
sentences 1 object	-0.19
sentences 1 opens	-0.37
sentences 1 subject	-0.20
sentences 1 subject-late	-0.09
size 1	-0.20
size 2	0.14
size 3	0.39
stands-off-after	0.11
subject none +1	-0.26
subject none -2	-0.11
subject none -4	-0.13
subject none here-after	0.15
subject none here-before	0.39
subject own +1	-0.11
subject own -1	-0.12
subject own -2	-0.08
subject own -4	-0.15
subject own here-before	0.31
subject person +1	-0.18
subject person -1	-0.10
subject person -2	-0.45
subject person -3	-0.25
subject person -4	0.13
subject person here-after	0.40
subject pointer +1	-0.17
subject pointer -1	0.19
subject pointer -2	0.12
subject pointer -3	-0.19
subject pointer -4	-0.28
subject pointer here-after	0.20
told -1	0.81
told -2	0.78
told -4	0.66
told area	0.08
told defect	-0.53
told finish	-0.17
told fixture	0.47
told here-after	0.31
told here-before	0.22
told material	0.39
told part	0.30
told size	0.19
told surface	0.41
told tool	-0.11
told verbish	-0.08
told word	0.17
touches-before	0.25
unit none defect	-0.21
unit none finish	-0.21
unit none fixture	0.15
unit none material	0.09
unit none part	0.24
unit none surface	0.08
unit none tells	-0.15
unit none tool	-0.08
unit none word	-0.15
unit none work	-0.14
use buy	0.15
use have	-0.10
use need	-0.09
use see	0.15
where +1	-0.19
where -2	-0.06
where -4	-0.16
where here-after	0.10
where here-before	0.29
whole after at fixture	-0.11
whole after at material	-0.23
whole after at part	0.52
whole after at surface	-0.13
whole after at word	-0.12
whole after behind defect	-0.08
whole after behind fixture	-0.54
whole after by defect	-0.10
whole after by fixture	-0.20
whole after end defect	-0.10
whole after for defect	-0.08
whole after in area	-0.10
whole after in defect	-0.08
whole after in material	0.13
whole after in word	-0.18
whole after on defect	-0.11
whole after on surface	-0.24
whole after on word	-0.16
whole after out material	-0.06
whole after quantity defect	-0.11
whole after quantity fixture	-0.10
whole after quantity material	-0.14
whole after quantity surface	0.31
whole after quantity verbish	-0.18
whole after term area	0.08
whole after term fixture	0.80
whole after term material	-0.07
whole after term part	-0.22
whole after term verbish	0.07
whole after term word	-0.23
whole after with defect	-0.10
whole after word area	0.22
whole after word defect	-0.16
whole after word finish	-0.10
whole after word fixture	0.23
whole after word size	-0.08
whole after word tells	0.23
whole after word tool	-0.17
whole after word verbish	-0.16
whole article a	-0.13
whole article none	-0.28
whole behind about +1	-0.12
whole behind about -1	-0.39
whole behind about -2	-0.22
whole behind about -4	-0.11
whole behind about here-before	-0.12
whole behind at +1	-0.18
whole behind at -1	-0.13
whole behind at -2	-0.26
whole behind at -3	-0.17
whole behind at -4	-0.21
whole behind at here-before	0.21
whole behind behind +1	-0.09
whole behind behind -1	0.62
whole behind behind -2	-0.21
whole behind behind -3	-0.10
whole behind behind here-before	0.08
whole behind by +1	-0.15
whole behind by -1	-0.35
whole behind by -2	-0.20
whole behind by -3	0.19
whole behind by here-after	-0.08
whole behind by here-before	-0.21
whole behind down +1	-0.18
whole behind down -1	-0.20
whole behind down -2	0.17
whole behind down here-after	0.07
whole behind end +1	-0.09
whole behind end -2	-0.11
whole behind end -3	-0.13
whole behind end -4	-0.17
whole behind end here-after	-0.10
whole behind end here-before	0.18
whole behind for -1	0.34
whole behind for -3	-0.20
whole behind for -4	0.22
whole behind for here-after	-0.31
whole behind for here-before	0.47
whole behind from +1	-0.17
whole behind from -1	-0.20
whole behind from -2	-0.22
whole behind from -3	0.07
whole behind from -4	-0.12
whole behind from here-after	0.13
whole behind from here-before	0.29
whole behind in -2	-0.15
whole behind in -3	-0.18
whole behind in -4	-0.22
whole behind in here-after	-0.26
whole behind in here-before	0.14
whole behind mark +1	-0.15
whole behind mark -1	-0.22
whole behind mark -2	-0.07
whole behind mark here-after	0.34
whole behind number -2	-0.15
whole behind number here-after	0.08
whole behind of -2	0.52
whole behind of here-after	0.11
whole behind off +1	-0.14
whole behind off -1	0.48
whole behind off -3	-0.17
whole behind off -4	-0.09
whole behind off here-after	0.08
whole behind off here-before	-0.07
whole behind on +1	-0.14
whole behind on -1	-0.26
whole behind on -2	-0.11
whole behind on -3	-0.08
whole behind on -4	-0.17
whole behind on here-before	-0.06
whole behind out +1	-0.19
whole behind out -3	-0.08
whole behind out -4	-0.12
whole behind out here-after	-0.27
whole behind out here-before	-0.10
whole behind quantity -1	0.19
whole behind quantity -3	-0.18
whole behind quantity -4	-0.28
whole behind quantity here-before	0.17
whole behind term +1	-0.23
whole behind term -1	-0.07
whole behind term -2	-0.18
whole behind term -3	-0.11
whole behind term -4	-0.26
whole behind term here-before	-0.08
whole behind to +1	-0.23
whole behind to here-after	-0.27
whole behind under here-after	-0.29
whole behind up +1	-0.08
whole behind up -1	0.31
whole behind up -2	-0.10
whole behind with +1	-0.14
whole behind with -2	-0.07
whole behind with here-after	-0.24
whole behind word +1	-0.14
whole behind word -2	-0.07
whole behind word -3	-0.08
whole behind word -4	-0.10
whole behind-verb	-0.09
whole between are	0.34
whole between be	-0.06
whole between has	0.08
whole between have	0.36
whole between is	0.22
whole between were	-0.10
whole counted count	0.06
whole counted pack	-0.15
whole counted percent	-0.10
whole counted time	-0.11
whole counted voltage	-0.07
whole far after 0	-0.08
whole far after 13+	-0.13
whole far after 2	-0.07
whole far after 8-12	-0.06
whole far before 1	0.10
whole far before 13+	-0.26
whole far before 2	0.10
whole flawed	-0.09
whole frame copula +1	-0.10
whole frame copula -1	0.09
whole frame copula -2	-0.07
whole frame copula -3	-0.10
whole frame copula -4	-0.17
whole frame copula here-before	0.10
whole frame imperative -1	-0.15
whole frame imperative -2	0.24
whole frame imperative -3	-0.22
whole frame imperative -4	-0.30
whole frame imperative here-before	0.37
whole frame modal +1	0.12
whole frame modal -1	-0.11
whole frame modal -2	0.12
whole frame modal -3	-0.07
whole frame modal -4	-0.16
whole frame modal here-after	0.17
whole frame modal here-before	-0.12
whole frame none +1	-0.24
whole frame none -2	-0.11
whole frame none -3	-0.08
whole frame none -4	-0.15
whole frame none here-after	-0.16
whole frame none here-before	0.08
whole frame owed +1	-0.16
whole frame owed -1	-0.50
whole frame owed -2	-0.29
whole frame owed -3	-0.24
whole frame owed -4	-0.23
whole frame owed here-before	0.41
whole frame past +1	-0.19
whole frame past -1	-0.13
whole frame past -2	-0.10
whole frame past -3	-0.16
whole frame past -4	-0.12
whole frame past here-after	0.12
whole frame past here-before	0.09
whole frame present -2	-0.24
whole frame present -3	-0.12
whole frame present -4	-0.15
whole heading +1	-0.18
whole heading -2	0.07
whole heading here-after	-0.11
whole heading here-before	-0.06
whole is-flaw	-0.12
whole kind +1 area	-0.21
whole kind +1 defect	-0.13
whole kind +1 finish	-0.17
whole kind +1 fixture	0.09
whole kind +1 size	0.09
whole kind +1 surface	-0.13
whole kind +1 tells	-0.17
whole kind +1 tool	-0.13
whole kind +1 verbish	-0.19
whole kind +1 word	-0.16
whole kind -1 area	0.30
whole kind -1 defect	-0.27
whole kind -1 finish	-0.29
whole kind -1 fixture	0.61
whole kind -1 material	-0.11
whole kind -1 size	-0.25
whole kind -1 tells	-0.19
whole kind -1 tool	-0.27
whole kind -1 verbish	-0.15
whole kind -1 word	-0.09
whole kind -2 area	-0.15
whole kind -2 defect	-0.11
whole kind -2 fixture	0.12
whole kind -2 material	-0.13
whole kind -2 part	-0.07
whole kind -2 size	-0.08
whole kind -2 surface	0.07
whole kind -2 tells	-0.08
whole kind -2 tool	-0.14
whole kind -2 word	-0.10
whole kind -2 work	-0.10
whole kind -3 defect	-0.07
whole kind -3 finish	-0.07
whole kind -3 fixture	-0.12
whole kind -3 material	-0.08
whole kind -3 part	-0.08
whole kind -3 size	-0.09
whole kind -3 surface	-0.11
whole kind -3 tool	-0.12
whole kind -3 verbish	-0.09
whole kind -3 word	-0.06
whole kind -3 work	-0.10
whole kind -4 area	-0.06
whole kind -4 finish	-0.10
whole kind -4 fixture	-0.09
whole kind -4 material	-0.09
whole kind -4 part	-0.09
whole kind -4 size	-0.09
whole kind -4 surface	-0.10
whole kind -4 tells	-0.06
whole kind -4 tool	-0.07
whole kind -4 word	-0.09
whole kind -4 work	-0.09
whole kind defect	-0.18
whole kind finish	-0.13
whole kind fixture	0.16
whole kind here-after area	0.25
whole kind here-after defect	-0.12
whole kind here-after fixture	0.06
whole kind here-after part	0.07
whole kind here-after size	0.09
whole kind here-after tells	0.06
whole kind here-after tool	-0.08
whole kind here-before defect	-0.11
whole kind here-before finish	-0.16
whole kind here-before fixture	0.14
whole kind here-before size	0.18
whole kind here-before surface	0.17
whole kind here-before tool	0.15
whole kind material	-0.12
whole kind tells	-0.11
whole kind tool	-0.13
whole kind verbish	-0.07
whole kind word	-0.15
whole kind work	-0.16
whole lead a -1	0.06
whole lead a -2	-0.08
whole lead a -3	-0.17
whole lead a -4	-0.14
whole lead a here-after	-0.21
whole lead a here-before	-0.07
whole lead area -1	-0.32
whole lead area -3	-0.07
whole lead area -4	-0.20
whole lead area here-after	0.10
whole lead fixture -1	-0.22
whole lead fixture -3	-0.15
whole lead fixture -4	-0.17
whole lead fixture here-before	0.19
whole lead material -2	-0.16
whole lead material -3	-0.15
whole lead material -4	-0.18
whole lead material here-after	-0.30
whole lead number -4	-0.09
whole lead number here-after	-0.09
whole lead number here-before	0.81
whole lead part -1	-0.16
whole lead part -2	-0.14
whole lead part -3	-0.18
whole lead part -4	-0.13
whole lead quantity -2	-0.25
whole lead quantity -3	-0.12
whole lead quantity -4	-0.19
whole lead quantity here-before	0.29
whole lead role -1	-0.31
whole lead size -1	-0.71
whole lead size here-after	0.10
whole lead size here-before	0.14
whole lead surface -1	0.24
whole lead surface -2	0.06
whole lead surface -4	-0.27
whole lead surface here-after	-0.24
whole lead surface here-before	0.11
whole lead that here-after	0.61
whole lead the -2	-0.25
whole lead the -3	-0.21
whole lead the -4	-0.21
whole lead the here-after	0.42
whole lead the here-before	0.15
whole lead tool here-before	0.19
whole lead verbish -2	-0.15
whole lead verbish -4	-0.21
whole lead verbish here-before	0.08
whole lead word -1	0.16
whole lead word -3	-0.15
whole lead word -4	-0.17
whole lead word here-after	-0.07
whole lemma be subject-late	0.43
whole lemma drip object	0.32
whole lemma find object	0.56
whole lemma get object	-0.13
whole lemma get subject	-0.09
whole lemma go object	0.19
whole lemma go subject	0.12
whole lemma have subject-late	0.36
whole lemma pull object	-0.16
whole lemma run object	0.36
whole lemma run subject	-0.10
whole lemma say object	0.19
whole lemma sit object	-0.31
whole lemma turn subject	0.06
whole not-told	-0.31
whole not-told +1	-0.16
whole not-told -1	0.11
whole not-told -2	-0.09
whole not-told -3	-0.09
whole not-told -4	-0.14
whole not-told here-after	-0.11
whole opens-with +1	-0.12
whole opens-with -2	-0.15
whole opens-with -3	-0.10
whole opens-with -4	-0.12
whole part +1 object	-0.15
whole part +1 opens	-0.14
whole part +1 subject-late	-0.26
whole part -1 bare	-0.16
whole part -1 subject	0.07
whole part -1 subject-late	0.10
whole part -2 bare	-0.14
whole part -2 object	-0.12
whole part -2 opens	-0.11
whole part -2 subject-late	0.29
whole part -3 object	-0.10
whole part -3 subject	-0.08
whole part -3 subject-late	-0.19
whole part -4 bare	-0.09
whole part -4 object	-0.14
whole part -4 opens	-0.09
whole part -4 subject	-0.08
whole part bare	-0.14
whole part bare defect	-0.17
whole part bare finish	0.10
whole part bare material	-0.15
whole part bare part	-0.10
whole part bare size	-0.08
whole part bare surface	-0.13
whole part bare verbish	-0.16
whole part here-after bare	-0.17
whole part here-after subject-late	0.25
whole part here-before bare	0.40
whole part here-before object	0.13
whole part here-before subject-late	0.33
whole part object	-0.19
whole part object area	0.08
whole part object defect	-0.15
whole part object finish	-0.14
whole part object fixture	0.16
whole part object material	-0.13
whole part object tells	-0.07
whole part object tool	-0.13
whole part object verbish	-0.06
whole part object word	-0.11
whole part object work	-0.12
whole part opens	-0.11
whole part opens defect	-0.13
whole part opens finish	-0.16
whole part opens size	-0.16
whole part opens surface	-0.19
whole part opens tells	0.07
whole part opens verbish	-0.08
whole part opens word	-0.13
whole part opens work	-0.07
whole part subject defect	-0.07
whole part subject finish	-0.09
whole part subject fixture	0.07
whole part subject part	-0.07
whole part subject size	-0.07
whole part subject tells	-0.21
whole part subject tool	-0.10
whole part subject work	-0.17
whole part subject-late	0.14
whole part subject-late area	-0.12
whole part subject-late defect	-0.08
whole part subject-late fixture	0.32
whole part subject-late material	0.16
whole part subject-late part	0.15
whole part subject-late size	0.28
whole part subject-late surface	0.56
whole part subject-late word	-0.20
whole prep about	-0.10
whole prep above	0.15
whole prep across	-0.10
whole prep after	-0.26
whole prep along	-0.30
whole prep around	0.15
whole prep at	-0.10
whole prep before	-0.18
whole prep behind	0.37
whole prep below	-0.10
whole prep down	0.20
whole prep for	0.11
whole prep from	-0.12
whole prep here-after behind	0.09
whole prep here-after below	-0.07
whole prep here-after by	-0.09
whole prep here-after down	0.07
whole prep here-after in	0.33
whole prep here-after of	-0.09
whole prep here-after on	0.07
whole prep here-after out	-0.23
whole prep here-after over	0.09
whole prep here-after with	-0.23
whole prep here-before at	0.11
whole prep here-before by	0.21
whole prep here-before for	0.45
whole prep here-before in	0.25
whole prep here-before on	0.23
whole prep here-before over	0.34
whole prep here-before to	0.72
whole prep here-before under	0.34
whole prep here-before with	0.10
whole prep in	0.09
whole prep of	-0.13
whole prep off	-0.19
whole prep other above	0.18
whole prep other after	-0.24
whole prep other along	-0.07
whole prep other around	-0.10
whole prep other at	-0.17
whole prep other before	-0.18
whole prep other behind	0.44
whole prep other below	-0.07
whole prep other by	-0.07
whole prep other down	0.19
whole prep other from	-0.18
whole prep other into	0.13
whole prep other of	-0.16
whole prep other off	-0.18
whole prep other out	-0.11
whole prep other over	-0.06
whole prep other to	-0.09
whole prep other toward	-0.23
whole prep other under	-0.24
whole prep other with	-0.13
whole prep out	-0.24
whole prep over	0.08
whole prep toward	-0.46
whole prep with	-0.13
whole rank after 0	-0.11
whole rank after 2	-0.11
whole rank after 4	-0.21
whole rank before 3	-0.07
whole rank before 4	-0.21
whole says copula	-0.10
whole says none	-0.20
whole says owed	-0.14
whole says present	-0.12
whole sentences -1	-0.37
whole sentences -1 bare	-0.19
whole sentences -1 object	-0.21
whole sentences -1 opens	-0.19
whole sentences -1 subject	-0.21
whole sentences -1 subject-late	-0.27
whole sentences -2	-0.25
whole sentences -2 bare	-0.12
whole sentences -2 object	-0.14
whole sentences -2 opens	-0.13
whole sentences -2 subject	-0.10
whole sentences -2 subject-late	-0.10
whole sentences 1	-0.20
whole sentences 1 bare	-0.16
whole sentences 1 object	-0.11
whole sentences 1 opens	-0.12
whole sentences 1 subject	-0.20
whole sentences 1 subject-late	-0.14
whole size 1	-0.13
whole size 2	-0.15
whole size 3	-0.19
whole subject none +1	-0.25
whole subject none -1	-0.07
whole subject none -2	-0.06
whole subject none -3	-0.09
whole subject none -4	-0.13
whole subject none here-after	-0.09
whole subject none here-before	0.09
whole subject own +1	-0.10
whole subject own -2	-0.13
whole subject own -3	-0.16
whole subject own -4	-0.21
whole subject own here-before	0.09
whole subject person +1	0.12
whole subject person -1	-0.40
whole subject person -2	-0.18
whole subject person -3	-0.14
whole subject person -4	-0.15
whole subject person here-after	0.16
whole subject person here-before	-0.16
whole subject pointer +1	-0.10
whole subject pointer -1	0.11
whole subject pointer -3	-0.08
whole subject pointer -4	-0.15
whole subject pointer here-before	0.10
whole told -1	0.24
whole told -2	0.30
whole told defect	-0.12
whole told finish	0.06
whole told fixture	0.21
whole told size	-0.09
whole told surface	0.09
whole told tool	0.07
whole told word	0.07
whole unit none defect	-0.18
whole unit none finish	-0.13
whole unit none fixture	0.16
whole unit none material	-0.12
whole unit none tells	-0.11
whole unit none tool	-0.13
whole unit none verbish	-0.07
whole unit none word	-0.15
whole unit none work	-0.16
whole use measure	-0.08
whole use move	-0.06
whole use need	-0.17
whole use say	0.09
whole use see	-0.22
whole use use	-0.27
whole where +1	-0.13
whole where -2	-0.09
whole where -3	-0.10
whole where -4	-0.18
whole where here-before	0.07`;

export const POINTER = `article a	-0.10
article none	-0.18
article other	-0.31
article the	0.38
counted bare	0.14
counted count	0.44
counted length	-0.21
counted pack	-0.50
counted percent	0.09
does be area	-0.11
does be defect	-0.32
does be fixture	0.19
does be size	-0.32
does be tells	-0.13
does be tool	0.36
does be verbish	0.33
does call defect	-0.24
does call part	0.18
does call word	-0.26
does change material	0.34
does come defect	-0.19
does come fixture	-0.13
does come material	-0.43
does come surface	-0.24
does come word	0.18
does cut area	-0.37
does cut defect	0.11
does cut fixture	0.33
does cut verbish	-0.23
does cut word	0.09
does fill defect	0.29
does fill fixture	-0.12
does fill word	-0.13
does fre word	0.30
does get area	-0.38
does get defect	-0.41
does get finish	-0.19
does get fixture	0.40
does get material	0.44
does get part	0.12
does get surface	0.16
does get verbish	-0.15
does get word	-0.15
does go area	0.34
does go defect	-0.22
does go material	-0.37
does go part	0.46
does go surface	-0.11
does go verbish	-0.39
does go word	-0.13
does have area	-0.07
does have defect	0.53
does have fixture	-0.36
does have material	0.09
does have part	0.08
does have verbish	-0.08
does have word	-0.06
does leave word	0.57
does let word	-0.18
does look defect	-0.10
does look material	-0.29
does look part	0.48
does look word	-0.12
does move material	-0.29
does move part	0.83
does move word	-0.44
does need defect	-0.10
does need material	0.51
does need part	0.19
does need surface	0.21
does need word	0.15
does open defect	0.38
does open material	-0.09
does open word	-0.17
does pull part	0.07
does pull word	-0.27
does put area	-0.13
does put defect	-0.15
does put fixture	0.25
does put material	0.16
does put part	0.56
does put surface	-0.43
does put word	-0.25
does replace defect	-0.10
does replace material	-0.13
does sand defect	0.14
does sand surface	0.30
does sand word	-0.68
does say part	0.44
does say word	-0.32
does seal defect	-0.08
does seal material	-0.07
does seal surface	0.74
does seal word	-0.56
does snug part	0.24
does snug word	0.34
does swap area	-0.23
does swap defect	-0.28
does swap fixture	-0.55
does swap material	0.37
does swap part	0.54
does swap surface	-0.53
does swap verbish	-0.08
does swap word	0.39
does take area	-0.20
does take defect	-0.27
does take fixture	0.19
does take material	0.20
does take surface	-0.44
does take word	0.28
does want part	-0.28
does want verbish	0.23
does want word	-0.46
far before 0	-0.33
far before 1	-0.10
far before 13+	-0.07
far before 8-12	0.13
flawed	0.49
frame copula -2	0.11
frame copula defect	-0.39
frame copula finish	0.08
frame copula fixture	0.29
frame copula here-before	-0.26
frame copula material	0.29
frame copula part	0.31
frame copula size	-0.47
frame copula tells	-0.41
frame copula tool	-0.12
frame copula verbish	0.47
frame copula word	-0.39
frame imperative -1	-0.07
frame imperative -2	0.17
frame imperative -3	0.25
frame imperative -4	-0.25
frame imperative area	-0.07
frame imperative defect	-0.09
frame imperative finish	-0.19
frame imperative fixture	0.23
frame imperative here-before	-0.44
frame imperative material	0.19
frame imperative part	0.14
frame imperative size	0.13
frame imperative surface	-0.17
frame imperative tells	-0.52
frame imperative tool	-0.12
frame modal -1	-0.08
frame modal -2	0.23
frame modal -3	0.17
frame modal -4	-0.16
frame modal area	-0.07
frame modal defect	-0.23
frame modal fixture	0.07
frame modal here-before	-0.41
frame modal material	-0.07
frame modal part	0.93
frame modal size	-0.08
frame modal tells	-0.12
frame modal tool	-0.32
frame modal verbish	-0.28
frame modal word	-0.17
frame none -1	0.28
frame none -3	-0.13
frame none -4	-0.07
frame none area	0.85
frame none finish	-0.37
frame none fixture	-0.20
frame none here-before	-0.33
frame none material	-0.22
frame none part	0.19
frame none size	0.33
frame none tells	-0.30
frame none tool	-0.28
frame none verbish	-0.22
frame none word	-0.15
frame owed -1	0.39
frame owed -2	0.24
frame owed -3	-0.17
frame owed -4	-0.49
frame owed area	-0.08
frame owed defect	-0.19
frame owed finish	-0.46
frame owed fixture	0.36
frame owed here-before	0.07
frame owed part	0.55
frame owed size	-0.46
frame owed surface	0.28
frame owed tells	-0.30
frame owed tool	-0.28
frame owed verbish	-0.12
frame owed word	-0.18
frame past -1	0.35
frame past -3	-0.11
frame past -4	-0.48
frame past area	-0.27
frame past defect	-0.26
frame past finish	-0.16
frame past fixture	0.18
frame past here-before	0.56
frame past material	0.35
frame past part	0.35
frame past size	0.13
frame past tells	-0.10
frame past tool	-0.14
frame past verbish	-0.30
frame past word	-0.20
frame past work	-0.14
frame present -4	-0.13
frame present defect	0.09
frame present finish	-0.27
frame present fixture	0.71
frame present here-before	0.42
frame present part	-0.53
frame present size	0.10
frame present surface	0.13
frame present tells	-0.26
frame present tool	0.11
frame present verbish	-0.13
frame present word	-0.18
heading -1	-0.08
heading -3	-0.12
heading -4	0.08
join	-0.16
join +1	-0.11
join +1 finish	0.08
join +1 fixture	-0.15
join +1 size	0.10
join +1 surface	0.08
join +1 tells	-0.11
join +1 tool	-0.16
join +1 verbish	-0.07
join +1 word	-0.11
join +1 work	-0.10
join -1 area	0.22
join -1 defect	-0.13
join -1 finish	-0.20
join -1 fixture	0.23
join -1 part	-0.09
join -1 tells	-0.10
join -1 work	-0.06
join -2	-0.11
join -2 area	-0.17
join -2 finish	-0.07
join -2 material	-0.09
join -2 size	-0.10
join -2 surface	0.18
join -2 tool	-0.07
join -2 verbish	-0.06
join -2 word	-0.10
join -2 work	-0.07
join -3	-0.17
join -3 area	-0.12
join -3 defect	-0.10
join -3 finish	-0.13
join -3 material	-0.08
join -3 part	-0.12
join -3 size	-0.12
join -3 surface	-0.17
join -3 tool	-0.18
join -3 verbish	-0.06
join -3 work	-0.17
join area+area	-0.27
join area+finish	0.20
join area+fixture	-0.10
join area+size	0.23
join area+surface	0.09
join area+tool	-0.18
join defect	-0.09
join defect+area	-0.07
join defect+tool	-0.07
join finish	-0.09
join finish+area	0.16
join finish+fixture	-0.08
join finish+surface	-0.06
join finish+tool	0.06
join finish+verbish	-0.08
join finish+word	-0.06
join fixture+finish	-0.15
join fixture+fixture	0.08
join fixture+part	0.09
join fixture+tells	0.24
join fixture+tool	-0.17
join fixture+verbish	-0.06
join fixture+work	-0.13
join leads along	-0.20
join leads around	0.21
join leads at word	-0.07
join leads at word term	-0.09
join leads at word word	0.11
join leads by	0.73
join leads by term verb	0.06
join leads by term word	0.09
join leads for	0.12
join leads of	0.06
join leads off	0.08
join leads on quantity	0.06
join leads on word word	-0.11
join leads over	0.15
join leads over term word	0.10
join leads quantity at	-0.09
join leads quantity of quantity	-0.11
join leads quantity word quantity	-0.09
join leads term at	0.07
join leads term on	0.10
join leads term word	-0.13
join leads time	0.08
join leads to	-0.06
join leads to verb	-0.10
join leads verb at quantity	-0.07
join leads verb behind	-0.10
join leads verb in	0.08
join leads verb on	-0.12
join leads verb out quantity	-0.20
join leads verb verb word	-0.10
join leads verb with	0.47
join leads with	-0.08
join leads word in	0.11
join leads word on quantity	-0.07
join leads word quantity	-0.14
join leads word quantity word	-0.18
join leads word term verb	0.15
join leads word verb in	-0.12
join leads word verb quantity	-0.12
join leads word verb word	0.07
join leads word word quantity	-0.10
join leads word word verb	-0.11
join leads word word word	0.08
join links along	-0.47
join links around	0.21
join links at quantity	0.12
join links at word term	-0.10
join links at word word	0.51
join links before	-0.13
join links behind	0.37
join links by	0.55
join links by term	0.13
join links by term verb	0.23
join links by term word	0.14
join links for	0.41
join links in	0.19
join links in term verb	0.21
join links mark	0.07
join links of	0.29
join links of term word	-0.13
join links on	0.18
join links on quantity	0.12
join links on word	-0.07
join links on word word	-0.21
join links over	0.09
join links over term word	0.50
join links quantity at	-0.24
join links quantity of quantity	-0.13
join links quantity word quantity	-0.16
join links term at	0.23
join links term on	0.24
join links term word	-0.26
join links to	0.08
join links to verb	-0.09
join links under	0.24
join links verb at	0.79
join links verb at quantity	-0.07
join links verb behind	-0.51
join links verb in	-0.08
join links verb on	-0.08
join links verb out quantity	-0.47
join links verb quantity in	-0.07
join links verb term word	-0.17
join links verb verb	-0.14
join links verb verb out	-0.11
join links verb verb word	-0.10
join links verb with	0.24
join links verb word	0.06
join links with	-0.09
join links word on quantity	-0.16
join links word quantity	-0.08
join links word quantity of	-0.08
join links word quantity word	-0.19
join links word term	0.07
join links word term verb	-0.09
join links word verb	0.06
join links word verb at	-0.25
join links word verb in	-0.33
join links word verb quantity	-0.25
join links word word	0.10
join links word word quantity	-0.10
join links word word term	0.09
join links word word verb	-0.17
join material	0.10
join material+finish	-0.08
join material+fixture	0.33
join material+surface	0.14
join material+tells	-0.12
join material+verbish	-0.06
join material+word	-0.07
join material+work	-0.09
join part	-0.12
join part+area	-0.07
join part+defect	-0.19
join part+fixture	0.11
join part+surface	-0.08
join part+tells	-0.14
join part+work	-0.10
join same-after	0.14
join same-after area	0.08
join same-after finish	0.27
join same-after fixture	0.25
join same-after material	0.14
join same-after part	0.27
join same-after tells	-0.19
join same-after tool	0.17
join same-before finish	-0.11
join same-before size	0.08
join same-before surface	0.07
join same-before tells	0.08
join same-before tool	0.11
join size 2	-0.28
join size 3	-0.13
join size+area	0.29
join size+defect	-0.09
join size+finish	-0.11
join size+part	0.12
join size+surface	-0.11
join size+verbish	0.12
join size+word	-0.16
join sizes 1+1	0.18
join sizes 1+2	-0.22
join sizes 1+3	0.06
join sizes 2+1	-0.23
join sizes 2+2	-0.09
join sizes 2+3	-0.14
join sizes 3+1	-0.12
join sizes 3+3	-0.15
join surface	0.08
join surface+area	0.27
join surface+surface	0.11
join tells	-0.14
join tells+fixture	0.12
join tells+part	-0.07
join tells+tells	-0.15
join tool+area	-0.20
join tool+finish	0.35
join verbish	-0.12
join verbish+area	0.31
join verbish+finish	-0.13
join verbish+material	-0.06
join verbish+verbish	-0.14
join verbish+word	-0.10
join word	-0.15
join word+size	-0.15
join word+word	-0.06
join work	-0.18
join work+fixture	-0.08
kind -1 area	0.19
kind -1 defect	-0.21
kind -1 fixture	0.39
kind -1 material	0.14
kind -1 part	0.72
kind -1 size	0.43
kind -1 surface	0.21
kind -1 tells	-0.42
kind -1 tool	-0.23
kind -1 verbish	-0.22
kind -1 word	-0.14
kind -2 area	0.22
kind -2 defect	-0.13
kind -2 finish	-0.37
kind -2 fixture	0.34
kind -2 material	0.23
kind -2 part	0.14
kind -2 size	-0.15
kind -2 tells	-0.46
kind -2 tool	-0.53
kind -2 verbish	-0.10
kind -3 defect	-0.09
kind -3 finish	-0.35
kind -3 fixture	0.20
kind -3 material	0.19
kind -3 part	0.24
kind -3 size	-0.52
kind -3 surface	0.26
kind -3 tells	-0.39
kind -3 tool	-0.29
kind -3 verbish	0.14
kind -3 word	-0.33
kind -4 area	-0.15
kind -4 defect	-0.14
kind -4 finish	-0.11
kind -4 fixture	-0.10
kind -4 material	-0.07
kind -4 part	-0.30
kind -4 size	-0.11
kind -4 surface	-0.14
kind -4 tells	-0.18
kind -4 tool	-0.23
kind -4 word	-0.06
kind -4 work	-0.14
kind defect	-0.20
kind finish	-0.29
kind fixture	0.22
kind here-before area	-0.46
kind here-before defect	-0.10
kind here-before fixture	0.31
kind here-before material	0.14
kind here-before part	0.48
kind here-before size	0.16
kind here-before surface	-0.23
kind here-before tool	0.45
kind here-before verbish	-0.30
kind here-before word	-0.24
kind material	0.17
kind part	0.32
kind tells	-0.43
kind tool	-0.24
kind verbish	-0.06
kind word	-0.22
kind work	-0.34
number many many	0.62
number many one	-0.56
number none many	0.13
number one many	-0.12
number one one	0.08
part -1 bare	-0.35
part -1 opens	0.39
part -1 subject	0.33
part -1 subject-late	0.11
part -2 bare	-0.09
part -2 subject	0.20
part -2 subject-late	0.08
part -3 object	-0.13
part -3 opens	0.10
part -3 subject	0.09
part -3 subject-late	0.16
part -4 bare	-0.06
part -4 object	-0.22
part -4 opens	0.06
part -4 subject	-0.15
part -4 subject-late	-0.35
part bare	-0.17
part bare area	-0.07
part bare defect	-0.28
part bare finish	0.16
part bare fixture	-0.35
part bare material	-0.25
part bare part	0.36
part bare size	0.18
part bare verbish	0.21
part bare word	-0.18
part here-before bare	0.07
part here-before object	-0.18
part here-before opens	-0.41
part here-before subject	0.30
part here-before subject-late	-0.32
part object	-0.17
part object area	-0.10
part object defect	-0.14
part object finish	-0.31
part object fixture	0.34
part object material	-0.08
part object part	0.37
part object size	0.10
part object tells	-0.22
part object tool	-0.24
part object verbish	-0.11
part object word	-0.19
part opens	0.18
part opens area	0.34
part opens defect	0.11
part opens finish	-0.26
part opens fixture	0.46
part opens material	0.26
part opens part	0.24
part opens size	0.07
part opens surface	0.29
part opens tells	-0.34
part opens tool	-0.17
part opens word	-0.20
part opens work	-0.27
part subject	0.20
part subject defect	-0.65
part subject fixture	0.25
part subject material	0.41
part subject part	0.13
part subject size	-0.40
part subject surface	0.13
part subject tells	-0.67
part subject tool	-0.28
part subject verbish	-0.13
part subject word	0.14
part subject work	-0.16
part subject-late	-0.07
part subject-late defect	-0.08
part subject-late material	0.29
part subject-late part	0.17
part subject-late surface	-0.32
part subject-late tool	0.22
part subject-late verbish	-0.12
part subject-late word	-0.29
points em -1	0.11
points em -2	0.40
points em -4	-0.63
points em bare	-0.38
points em here-before	0.18
points em object	0.15
points em subject	0.12
points it -2	0.11
points it -4	-0.10
points it bare	-0.33
points it here-before	-0.12
points it object	-0.20
points it opens	0.14
points it subject	0.31
points it subject-late	-0.10
points none -1	0.24
points none -3	-0.09
points none -4	-0.20
points none bare	-0.10
points none object	-0.36
points none opens	0.28
points none subject	0.21
points one -1	0.36
points one -2	-0.06
points one -3	-0.14
points one -4	-0.35
points one here-before	0.25
points one opens	-0.22
points one subject	0.07
points one subject-late	0.06
points that -1	0.26
points that -2	0.08
points that -3	0.17
points that -4	-0.48
points that here-before	0.09
points that subject	0.08
points that subject-late	-0.29
points them -1	0.69
points them -3	-0.17
points them -4	-0.70
points them bare	-0.12
points them object	0.37
points them opens	-0.30
points them subject	-0.21
points them subject-late	0.12
points they -1	0.18
points they -2	0.13
points they -3	-0.48
points they object	-0.31
points they opens	0.20
points they subject	0.19
points they subject-late	0.13
points those -2	0.07
points those -3	0.55
points those -4	-0.56
points those opens	0.40
points those subject	-0.43
prep above	-0.13
prep after	-0.14
prep along	0.08
prep around	0.38
prep at	-0.22
prep before	-0.28
prep behind	-0.20
prep below	-0.17
prep by	-0.54
prep down	0.13
prep for	-0.31
prep from	-0.37
prep here-before at	0.22
prep here-before in	-0.18
prep here-before of	-0.42
prep here-before on	-0.19
prep here-before to	-0.24
prep in	-0.17
prep near	-0.52
prep of	-0.21
prep on	-0.08
prep other above	-0.13
prep other after	-0.14
prep other along	0.08
prep other around	0.38
prep other at	-0.24
prep other before	-0.28
prep other behind	-0.20
prep other below	-0.17
prep other by	-0.57
prep other down	0.13
prep other for	-0.31
prep other from	-0.54
prep other in	-0.17
prep other near	-0.52
prep other of	-0.15
prep other on	-0.06
prep other out	-0.28
prep other over	-0.59
prep other to	-0.42
prep other under	-0.76
prep other up	0.22
prep other with	-0.17
prep over	-0.66
prep to	-0.43
prep under	-0.76
prep up	0.22
prep with	-0.17
rank before 0	-0.12
says copula	0.11
says modal	-0.15
says present	-0.21
sentences -1	-0.65
sentences -1 bare	-0.37
sentences -1 object	-0.26
sentences -1 opens	-0.55
sentences -1 subject	-0.20
sentences -1 subject-late	-0.45
sentences -2	-0.50
sentences -2 bare	-0.26
sentences -2 object	-0.33
sentences -2 opens	-0.16
sentences -2 subject	-0.39
sentences -2 subject-late	-0.06
size 1	-0.32
size 2	0.34
size 3	0.51
use measure	0.13
use move	-0.18
use need	-0.07
use say	-0.27
use see	0.47
use use	-0.18
where -1	0.13
where -2	0.09
where -4	-0.26
whole article a	0.16
whole article none	-0.25
whole article other	-0.15
whole article the	0.11
whole behind-verb	-0.08
whole counted count	0.37
whole counted current	0.11
whole counted pack	0.14
whole counted percent	0.18
whole does be area	0.39
whole does be defect	-0.32
whole does be fixture	0.60
whole does be part	0.15
whole does be size	-0.17
whole does be surface	0.26
whole does be tells	-0.19
whole does be tool	0.25
whole does be verbish	-0.09
whole does call defect	-0.10
whole does call word	-0.10
whole does come defect	-0.37
whole does come fixture	0.27
whole does come material	-0.24
whole does come surface	-0.10
whole does come word	0.10
whole does cut area	-0.24
whole does cut defect	0.38
whole does cut fixture	-0.21
whole does cut material	-0.24
whole does cut surface	0.10
whole does cut verbish	-0.08
whole does cut word	-0.24
whole does fill defect	0.74
whole does fill fixture	-0.23
whole does fill word	-0.17
whole does get area	-0.64
whole does get defect	-0.17
whole does get finish	-0.10
whole does get fixture	0.37
whole does get material	0.12
whole does get surface	0.50
whole does get verbish	-0.14
whole does get word	0.15
whole does go area	0.23
whole does go defect	-0.37
whole does go material	-0.13
whole does go part	-0.22
whole does go surface	0.25
whole does go verbish	-0.22
whole does go word	0.29
whole does have area	0.07
whole does have defect	0.13
whole does have fixture	-0.20
whole does have material	-0.29
whole does have part	0.23
whole does have verbish	-0.16
whole does have word	-0.33
whole does leave material	-0.13
whole does leave word	-0.10
whole does let word	-0.22
whole does look defect	-0.12
whole does look material	-0.15
whole does look part	0.17
whole does move material	-0.57
whole does move part	-0.16
whole does move word	0.27
whole does need material	0.44
whole does need part	-0.06
whole does need surface	-0.11
whole does need word	-0.21
whole does open defect	0.66
whole does open material	0.15
whole does open surface	-0.09
whole does open word	-0.21
whole does pull part	-0.17
whole does pull word	-0.15
whole does put area	0.09
whole does put fixture	0.31
whole does put material	-0.21
whole does put part	-0.29
whole does put surface	-0.39
whole does put word	-0.29
whole does replace defect	-0.09
whole does replace material	0.21
whole does run word	-0.41
whole does sand defect	0.30
whole does sand surface	0.98
whole does sand word	-0.35
whole does say part	-0.09
whole does say word	-0.14
whole does seal material	0.21
whole does seal surface	0.12
whole does shim word	-0.18
whole does snug part	0.12
whole does snug word	0.20
whole does swap area	-0.37
whole does swap defect	-0.20
whole does swap fixture	0.38
whole does swap surface	-0.40
whole does take area	-0.32
whole does take defect	-0.17
whole does take fixture	-0.23
whole does take material	-0.26
whole does take surface	-0.20
whole does want material	0.18
whole does want part	-0.20
whole does want verbish	0.17
whole does want word	-0.24
whole far before 0	0.28
whole far before 13+	-0.19
whole frame copula -1	0.08
whole frame copula -2	-0.11
whole frame copula -4	0.06
whole frame copula area	0.30
whole frame copula defect	-0.21
whole frame copula finish	0.32
whole frame copula fixture	0.54
whole frame copula here-before	0.11
whole frame copula part	0.09
whole frame copula size	-0.06
whole frame copula surface	0.07
whole frame copula tells	-0.32
whole frame copula tool	-0.09
whole frame copula verbish	-0.12
whole frame copula word	-0.29
whole frame imperative -1	0.08
whole frame imperative -2	0.33
whole frame imperative -3	-0.07
whole frame imperative -4	-0.21
whole frame imperative finish	0.18
whole frame imperative fixture	0.17
whole frame imperative here-before	-0.45
whole frame imperative part	0.15
whole frame imperative size	0.22
whole frame imperative surface	0.09
whole frame imperative tells	-0.08
whole frame imperative tool	0.35
whole frame imperative verbish	-0.16
whole frame imperative word	-0.29
whole frame modal -2	0.07
whole frame modal -3	-0.21
whole frame modal -4	-0.08
whole frame modal area	-0.30
whole frame modal defect	-0.13
whole frame modal fixture	0.07
whole frame modal material	0.08
whole frame modal surface	0.27
whole frame modal tells	-0.22
whole frame modal tool	-0.44
whole frame modal verbish	0.14
whole frame modal word	-0.23
whole frame none -1	0.27
whole frame none -2	-0.26
whole frame none -3	0.06
whole frame none -4	-0.09
whole frame none area	0.31
whole frame none defect	-0.11
whole frame none finish	-0.25
whole frame none fixture	-0.08
whole frame none material	0.17
whole frame none part	0.23
whole frame none size	0.26
whole frame none surface	0.07
whole frame none tells	-0.21
whole frame none tool	-0.10
whole frame none word	-0.28
whole frame owed -1	-0.27
whole frame owed -2	0.32
whole frame owed -4	-0.16
whole frame owed defect	-0.24
whole frame owed finish	-0.40
whole frame owed fixture	0.26
whole frame owed here-before	0.30
whole frame owed part	-0.19
whole frame owed size	-0.17
whole frame owed surface	0.38
whole frame owed tells	-0.22
whole frame owed tool	-0.29
whole frame owed verbish	-0.15
whole frame owed word	0.16
whole frame past -2	-0.22
whole frame past -3	-0.38
whole frame past -4	-0.34
whole frame past defect	-0.27
whole frame past finish	-0.11
whole frame past here-before	0.26
whole frame past part	-0.20
whole frame past size	-0.12
whole frame past surface	-0.09
whole frame past tells	0.24
whole frame past verbish	-0.33
whole frame past word	-0.24
whole frame present -1	0.09
whole frame present -3	0.19
whole frame present -4	-0.20
whole frame present area	0.17
whole frame present defect	0.34
whole frame present finish	-0.14
whole frame present fixture	0.07
whole frame present here-before	-0.09
whole frame present material	-0.32
whole frame present part	-0.17
whole frame present tells	-0.22
whole frame present tool	0.07
whole frame present verbish	-0.24
whole frame present word	0.13
whole heading -4	0.12
whole kind -1 area	0.38
whole kind -1 defect	-0.15
whole kind -1 finish	0.29
whole kind -1 fixture	0.12
whole kind -1 material	0.10
whole kind -1 part	0.09
whole kind -1 size	0.07
whole kind -1 surface	0.23
whole kind -1 tells	-0.17
whole kind -1 tool	-0.11
whole kind -1 word	-0.18
whole kind -2 area	-0.15
whole kind -2 defect	-0.25
whole kind -2 fixture	0.28
whole kind -2 material	-0.10
whole kind -2 part	0.07
whole kind -2 size	0.11
whole kind -2 surface	0.12
whole kind -2 tells	-0.11
whole kind -2 tool	0.06
whole kind -2 verbish	-0.18
whole kind -3 defect	0.12
whole kind -3 finish	-0.26
whole kind -3 fixture	0.19
whole kind -3 part	-0.12
whole kind -3 size	0.08
whole kind -3 tells	-0.20
whole kind -3 tool	-0.22
whole kind -3 verbish	-0.16
whole kind -3 word	-0.18
whole kind -4 area	0.14
whole kind -4 defect	-0.14
whole kind -4 finish	-0.21
whole kind -4 material	-0.13
whole kind -4 part	-0.15
whole kind -4 size	-0.20
whole kind -4 tells	-0.13
whole kind -4 tool	-0.22
whole kind -4 verbish	-0.14
whole kind -4 word	-0.08
whole kind -4 work	-0.26
whole kind area	0.08
whole kind defect	-0.13
whole kind fixture	0.16
whole kind here-before defect	0.31
whole kind here-before fixture	-0.30
whole kind here-before material	0.49
whole kind here-before part	0.19
whole kind here-before size	0.10
whole kind here-before surface	-0.27
whole kind here-before tool	0.07
whole kind here-before verbish	-0.21
whole kind here-before word	-0.12
whole kind surface	0.09
whole kind tells	-0.20
whole kind tool	-0.11
whole kind verbish	-0.15
whole kind word	-0.19
whole kind work	-0.33
whole number many many	-0.13
whole number many one	-0.31
whole number none one	-0.23
whole number one many	-0.16
whole part -1 bare	-0.07
whole part -1 object	0.07
whole part -1 opens	-0.10
whole part -1 subject-late	0.12
whole part -2 bare	-0.12
whole part -2 opens	-0.06
whole part -2 subject-late	0.52
whole part -3 bare	-0.14
whole part -3 opens	-0.07
whole part -3 subject-late	-0.12
whole part -4 bare	-0.13
whole part -4 object	-0.20
whole part -4 opens	0.13
whole part -4 subject	-0.09
whole part bare	-0.13
whole part bare area	-0.09
whole part bare defect	-0.20
whole part bare finish	0.36
whole part bare fixture	-0.13
whole part bare size	0.06
whole part bare surface	0.21
whole part bare verbish	-0.27
whole part bare word	-0.17
whole part here-before bare	0.48
whole part here-before object	0.08
whole part here-before opens	-0.48
whole part here-before subject	0.27
whole part here-before subject-late	-0.56
whole part object	-0.09
whole part object area	0.21
whole part object defect	-0.06
whole part object finish	-0.11
whole part object fixture	0.19
whole part object tells	-0.13
whole part object tool	-0.16
whole part object verbish	-0.14
whole part object word	-0.18
whole part opens defect	-0.07
whole part opens finish	-0.26
whole part opens fixture	0.25
whole part opens material	-0.07
whole part opens part	-0.15
whole part opens surface	0.35
whole part opens tells	-0.14
whole part opens tool	-0.19
whole part opens verbish	-0.15
whole part opens word	-0.11
whole part opens work	-0.24
whole part subject area	0.11
whole part subject defect	-0.44
whole part subject tells	-0.28
whole part subject verbish	-0.10
whole part subject-late	0.08
whole part subject-late area	-0.10
whole part subject-late defect	-0.41
whole part subject-late fixture	0.26
whole part subject-late material	-0.14
whole part subject-late part	0.14
whole part subject-late surface	0.29
whole part subject-late tool	0.34
whole part subject-late verbish	0.21
whole part subject-late word	-0.07
whole points em -1	-0.31
whole points em -2	-0.11
whole points em -3	-0.12
whole points em -4	-0.36
whole points em bare	-0.53
whole points em here-before	0.10
whole points em object	-0.23
whole points em subject	-0.21
whole points em subject-late	0.10
whole points it -2	0.08
whole points it -3	-0.10
whole points it -4	-0.07
whole points it here-before	-0.35
whole points it object	-0.13
whole points it subject-late	-0.06
whole points none -2	-0.19
whole points none -3	-0.11
whole points none -4	-0.16
whole points none bare	-0.20
whole points none here-before	0.47
whole points none object	-0.21
whole points none opens	-0.09
whole points none subject-late	0.32
whole points one -1	0.22
whole points one -3	-0.26
whole points one -4	0.12
whole points one bare	-0.16
whole points one here-before	0.74
whole points one object	0.22
whole points one opens	0.38
whole points one subject	0.14
whole points one subject-late	-0.18
whole points that -1	0.21
whole points that -4	-0.45
whole points that bare	-0.17
whole points that here-before	0.25
whole points that object	0.13
whole points that subject	-0.20
whole points them -1	0.39
whole points them -3	-0.20
whole points them -4	-0.32
whole points them object	0.08
whole points them opens	-0.12
whole points them subject	-0.07
whole points them subject-late	-0.21
whole points they -1	-0.12
whole points they -2	0.08
whole points they bare	-0.17
whole points they object	-0.19
whole points they opens	-0.12
whole points they subject	-0.14
whole points they subject-late	0.39
whole points those -2	-0.10
whole points those -4	-0.31
whole points those object	-0.36
whole points those opens	-0.13
whole prep above	0.23
whole prep after	-0.12
whole prep along	-0.23
whole prep around	0.42
whole prep at	-0.07
whole prep before	-0.15
whole prep behind	0.77
whole prep below	-0.14
whole prep by	-0.23
whole prep down	-0.19
whole prep for	0.07
whole prep from	-0.26
whole prep here-before at	0.41
whole prep here-before in	-0.51
whole prep here-before on	-0.51
whole prep here-before to	-0.20
whole prep in	0.14
whole prep into	0.12
whole prep near	-0.08
whole prep of	0.08
whole prep off	-0.20
whole prep other above	0.23
whole prep other after	-0.12
whole prep other along	-0.23
whole prep other around	0.42
whole prep other at	-0.10
whole prep other before	-0.15
whole prep other behind	0.77
whole prep other below	-0.14
whole prep other by	-0.22
whole prep other down	-0.19
whole prep other for	0.08
whole prep other from	-0.27
whole prep other in	0.18
whole prep other into	0.12
whole prep other near	-0.08
whole prep other of	0.10
whole prep other off	-0.20
whole prep other out	-0.18
whole prep other over	-0.25
whole prep other to	-0.26
whole prep other under	-0.31
whole prep other up	-0.07
whole prep other with	-0.19
whole prep out	-0.11
whole prep over	-0.44
whole prep to	-0.27
whole prep under	-0.31
whole prep up	-0.07
whole prep with	-0.18
whole rank before 4	-0.20
whole says imperative	0.12
whole says none	-0.12
whole says owed	-0.18
whole says past	-0.10
whole sentences -1	-0.33
whole sentences -1 bare	-0.19
whole sentences -1 object	-0.23
whole sentences -1 opens	-0.18
whole sentences -1 subject	-0.15
whole sentences -1 subject-late	0.11
whole sentences -2	-0.27
whole sentences -2 bare	-0.33
whole sentences -2 object	-0.27
whole sentences -2 opens	0.07
whole sentences -2 subject	-0.08
whole sentences -2 subject-late	-0.18
whole size 2	-0.24
whole use buy	-0.11
whole use have	0.13
whole use measure	0.15
whole use move	-0.09
whole use need	-0.10
whole use say	0.26
whole use use	-0.10
whole use work	-0.23
whole where -3	-0.10
whole where -4	-0.16
whole where here-before	0.08`;
