/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
ahead #	-21
ahead a	-8
ahead about	-27
ahead above	-15
ahead across	21
ahead after	-52
ahead against	-25
ahead ain't	-13
ahead all	9
ahead along	24
ahead an	-11
ahead and	-31
ahead are	22
ahead area	-18
ahead around	23
ahead at	-3
ahead b	-8
ahead back	-23
ahead before	-37
ahead behind	-42
ahead below	-47
ahead between	66
ahead both	-26
ahead by	-28
ahead can	-60
ahead can't	-24
ahead code	-43
ahead defect	6
ahead didn't	46
ahead don't	-32
ahead down	-17
ahead each	-15
ahead every	-45
ahead finish	15
ahead for	53
ahead from	43
ahead gonna	7
ahead gotta	-15
ahead has	-34
ahead her	-11
ahead here	-18
ahead i	-18
ahead i've	-37
ahead in	29
ahead inside	-34
ahead instead	-12
ahead is	-2
ahead isn't	-24
ahead it	-19
ahead it's	-12
ahead just	75
ahead material	-9
ahead nearly	4
ahead never	-4
ahead next	-10
ahead no	28
ahead not	67
ahead nothing	-12
ahead now	-44
ahead off	-36
ahead on	33
ahead ones	-59
ahead only	-43
ahead or	7
ahead out	32
ahead over	52
ahead part	-21
ahead please	-45
ahead role	18
ahead short	56
ahead since	-38
ahead so	-21
ahead some	-6
ahead somebody	-11
ahead still	-21
ahead surface	61
ahead than	-5
ahead that	40
ahead the	-13
ahead them	-24
ahead there	-65
ahead they	72
ahead this	-3
ahead though	71
ahead through	12
ahead til	-10
ahead till	-57
ahead to	7
ahead too	9
ahead under	-44
ahead underneath	-3
ahead until	34
ahead up	19
ahead v buy	-28
ahead v have	51
ahead v measure	22
ahead v move	22
ahead v need	-25
ahead v other	27
ahead v say	-28
ahead v see	-8
ahead v use	-42
ahead v work	-10
ahead we	36
ahead were	-9
ahead when	51
ahead where	-35
ahead which	-20
ahead will	-39
ahead with	-44
ahead within	-17
ahead won't	59
ahead word	-10
ahead wouldn't	-20
ahead you	-7
alone	8
alone area	-19
alone finish	11
alone fixture	68
alone material	13
alone part	22
alone surface	-3
alone word	-18
apart false	-7
apart true	-25
asked add word	-6
asked be area	-42
asked be finish	36
asked be fixture	40
asked be material	-8
asked be part	44
asked be surface	2
asked be tool	-33
asked be word	-47
asked blow word	-23
asked bring area	42
asked bring finish	-34
asked bring fixture	22
asked bring material	-55
asked bring part	29
asked bring surface	-19
asked bring tool	44
asked bring word	-3
asked burn area	-6
asked burn material	-10
asked burn surface	-14
asked burn word	-18
asked buy area	-7
asked buy part	-4
asked buy surface	4
asked buy word	-8
asked change area	-14
asked change fixture	-3
asked change material	-48
asked change part	-30
asked change surface	-42
asked change word	-13
asked cut material	53
asked cut surface	57
asked cut word	-32
asked do material	13
asked do surface	-4
asked do word	55
asked drive surface	-5
asked figure area	-5
asked figure material	45
asked figure word	-15
asked finish material	56
asked get area	-18
asked get finish	57
asked get material	25
asked get part	27
asked get surface	-16
asked get tool	61
asked get word	17
asked give material	53
asked give surface	-12
asked give word	-26
asked glue fixture	-17
asked glue material	28
asked glue surface	53
asked glue word	-34
asked go area	-12
asked go finish	-23
asked go fixture	-31
asked go material	68
asked go part	-10
asked go surface	-47
asked go word	-43
asked grab area	-20
asked grab finish	-46
asked grab fixture	-32
asked grab material	30
asked grab part	-45
asked grab surface	3
asked grab word	-45
asked hang area	-47
asked hang fixture	-25
asked hang material	-36
asked hang part	28
asked hang surface	-8
asked hang word	-32
asked have area	-14
asked have finish	36
asked have fixture	-48
asked have material	9
asked have part	21
asked have surface	-32
asked have tool	31
asked have word	16
asked lay area	-15
asked lay material	17
asked lay word	-49
asked leave area	-10
asked leave finish	-6
asked leave fixture	-24
asked leave material	26
asked leave part	21
asked leave surface	-22
asked leave tool	26
asked leave word	-5
asked make material	24
asked make word	-50
asked miss fixture	-20
asked miss material	40
asked miss word	-7
asked need area	-4
asked need finish	7
asked need fixture	-16
asked need material	-25
asked need part	-16
asked need surface	-16
asked need tool	11
asked need word	-17
asked need work	-6
asked null area	-26
asked null finish	14
asked null fixture	-11
asked null material	21
asked null part	-22
asked null surface	-14
asked null word	-5
asked null work	-17
asked order area	-40
asked order fixture	81
asked order material	35
asked order part	19
asked order surface	-17
asked order word	-26
asked pick area	-11
asked pick finish	-31
asked pick fixture	-23
asked pick material	63
asked pick part	97
asked pick surface	-25
asked pick tool	-11
asked pick word	-67
asked put area	-45
asked put finish	-9
asked put fixture	-66
asked put material	-32
asked put part	-3
asked put surface	-17
asked put word	-22
asked run area	-41
asked run material	33
asked run part	-7
asked run word	6
asked say material	-30
asked say word	-18
asked send fixture	23
asked send material	82
asked send surface	30
asked send word	-78
asked set material	-86
asked set part	69
asked set surface	22
asked set word	31
asked swap area	-4
asked swap fixture	-74
asked swap material	73
asked swap part	119
asked swap surface	-47
asked swap word	-14
asked take area	-11
asked take fixture	-61
asked take material	-59
asked take part	-34
asked take surface	-39
asked take word	22
asked throw area	-4
asked throw material	20
asked throw part	-3
asked throw surface	-19
asked throw word	-46
asked use area	-21
asked use finish	83
asked use fixture	-28
asked use material	23
asked use part	-42
asked use surface	2
asked use tool	-16
asked use word	-3
asked want area	7
asked want finish	-55
asked want fixture	-11
asked want material	-61
asked want part	15
asked want surface	34
asked want tool	-31
asked want word	13
back 0	48
back 1	58
back 2	13
back 3	-24
back 4	-34
back 5	-22
back 6	-29
back 7	-32
back 8	-28
before another	-33
before more	51
before new	12
before no	28
behind #	8
behind a	-14
behind about	-54
behind above	-2
behind after	-23
behind all	20
behind an	-6
behind and	29
behind another	-33
behind any	-23
behind are	2
behind around	-7
behind at	-44
behind before	-5
behind behind	-14
behind below	-28
behind between	-50
behind both	-37
behind by	-20
behind can	-85
behind d	14
behind don't	-38
behind down	-14
behind each	-14
behind em	81
behind every	-51
behind for	-8
behind from	-22
behind gotta	-7
behind has	-44
behind her	13
behind here	-7
behind his	-5
behind i	-41
behind i'll	-45
behind i'm	-11
behind i've	-18
behind in	-17
behind into	-17
behind is	-15
behind it	-31
behind it's	-26
behind its	29
behind mark	-35
behind me	132
behind more	51
behind my	27
behind n	-7
behind near	-8
behind new	12
behind no	28
behind nobody	-28
behind not	-59
behind now	86
behind number	16
behind of	15
behind off	-14
behind old	43
behind on	-25
behind one's	14
behind ones	-72
behind out	-12
behind over	-27
behind please	-3
behind quantity	-5
behind she's	-4
behind so	-21
behind some	42
behind somebody	-55
behind term	-11
behind that	-53
behind that's	-27
behind the	5
behind their	40
behind them	-6
behind then	-26
behind there	-7
behind there's	6
behind they	-37
behind they're	-18
behind this	42
behind those	-19
behind through	-11
behind time	-4
behind to	-25
behind too	-14
behind under	-9
behind up	-11
behind v buy	5
behind v have	-57
behind v measure	-25
behind v move	-24
behind v need	28
behind v say	14
behind v see	-43
behind v work	-5
behind we	-71
behind we're	-9
behind where	-6
behind whole	-37
behind will	-4
behind with	-8
behind x	-11
behind you	-14
behind your	-27
by L paint	11
by L undefined	29
by article appliances	-83
by article bathroom	-41
by article bottom	-7
by article concrete	11
by article corner	-57
by article door	23
by article doors	47
by article drywall	-4
by article electrical	-50
by article hardware	56
by article hvac	-18
by article light fixture	-63
by article lumber	11
by article one's	-21
by article p-trap	-16
by article paint	-32
by article plumbing	-57
by article right	-6
by article screw	-57
by article solid	-33
by article still	-19
by article tile	5
by article toilet	-14
by article undefined	-20
by article wall	-4
by article water	-3
by bag again	-3
by bag appliances	55
by bag attic	-4
by bag backsplash	-3
by bag bathroom	-3
by bag blown insulation	17
by bag bracket	-64
by bag cable	-7
by bag concrete	-6
by bag corner	-7
by bag door	-12
by bag doors	-13
by bag drywall	95
by bag edge	-4
by bag electrical	2
by bag fence post	-61
by bag floor	-7
by bag flooring	-9
by bag grout	54
by bag hardware	-46
by bag hole	-17
by bag j bend	-6
by bag landscape	-17
by bag lumber	-49
by bag mosaic	-39
by bag outlet	-6
by bag paint	-16
by bag plumbing	-50
by bag roofing	-12
by bag screw	26
by bag self leveler	103
by bag thinset	10
by bag tile	26
by bag undefined	20
by bag wall	-6
by bottle hardware	6
by bottle lumber	-10
by bottle undefined	-19
by box appliances	13
by box backsplash	-5
by box baseboard	35
by box beam	-7
by box bedroom	-3
by box board	-3
by box boards	-3
by box bottom plate	15
by box cabinet	40
by box cabinet screw	53
by box closet	-22
by box concrete	-72
by box corner	80
by box door	-11
by box doors	39
by box drywall	-35
by box edge	-23
by box electrical	79
by box except	-9
by box finish nail	22
by box floor	-16
by box flooring	36
by box hall	-3
by box hardware	85
by box hole	-4
by box kitchen	-8
by box lumber	9
by box matte	-4
by box nail	14
by box outlet	-55
by box paint	-43
by box patio door	-12
by box plumbing	-64
by box right	-3
by box screw	-23
by box silicone	-17
by box soffit	-5
by box still	-18
by box stud	-13
by box tape	-11
by box tile	21
by box undefined	-47
by box vinyl plank	56
by box wall	-48
by box wood filler	-11
by bucket doors	-5
by bucket drywall	106
by bucket first coat	-12
by bucket hardware	-27
by bucket lumber	-15
by bucket paint	-60
by bucket plumbing	-33
by bucket tape	-21
by bucket tile	-10
by bucket undefined	24
by bucket wall	-2
by bundle doors	-16
by bundle lumber	-66
by bundle paint	-10
by bundle undefined	39
by can doors	-27
by can edge	-3
by can electrical	-20
by can hardware	-17
by can hvac	-4
by can lumber	-54
by can paint	42
by can plumbing	-32
by can spray foam	26
by can undefined	-12
by carton flooring	42
by carton lumber	-3
by carton undefined	-51
by cartridge undefined	-76
by case undefined	-14
by coat ceiling	42
by coat undefined	-37
by count 2x10	-12
by count access panel	-4
by count acoustic ceiling tile	16
by count again	-5
by count air	-8
by count air filter	52
by count already	-19
by count anti	-6
by count appliances	-19
by count attic	-10
by count away	-8
by count backsplash	-54
by count ball valve	-12
by count baluster	108
by count bar	36
by count baseboard	10
by count basement	-3
by count bathroom	15
by count battery	42
by count beadboard	53
by count beam	-60
by count bed	-3
by count bedroom	-16
by count bench	-12
by count better	-5
by count black	-42
by count blade	49
by count blind	79
by count blocking	66
by count blower assembly	39
by count board	109
by count boards	17
by count bolt	-14
by count bottom	-16
by count bottom plate	13
by count bracket	45
by count breaker	83
by count brick	50
by count bulb	33
by count cabinet	-31
by count cabinet pull	109
by count cable	-58
by count cams	-3
by count carpet	-16
by count carpet pad	-23
by count cartridge	4
by count casing	-81
by count cat6 cable	-12
by count caulk	6
by count cavity	-17
by count ceiling	-15
by count ceiling fan	-6
by count center	-9
by count centers	42
by count centre	-6
by count ceramic tile	-57
by count chimney	-36
by count clamp	-7
by count clearance	-3
by count cleat	12
by count clip	-39
by count closet	-13
by count closet flange	-17
by count closet rod	28
by count coat	-6
by count cold	-5
by count color	33
by count concrete	23
by count construction adhesive	-20
by count corner	42
by count counter	-15
by count countertop	-48
by count course	-14
by count cover plate	54
by count crawlspace	-5
by count crown molding	-25
by count cutout	-27
by count damper	-9
by count data drop	-27
by count daylight	-2
by count deck	-28
by count deep	-11
by count delivery	22
by count dimmer	35
by count dining room	-18
by count dobie	-12
by count door	-13
by count door knob	29
by count door seal	91
by count door stile	-19
by count door sweep	-18
by count doors	3
by count drain	-34
by count drawer	-25
by count drawer front	59
by count drill bit	-62
by count driveway	-2
by count dryer vent	-22
by count drywall	18
by count duct	-26
by count due	-5
by count dumpster	-12
by count edge	-7
by count elbow	-24
by count end cap	82
by count end panel	-27
by count enough	-3
by count epoxy	6
by count evaporator coil	-23
by count even	-11
by count except	-8
by count exhaust fan	-10
by count exterior	35
by count exterior door	-32
by count far	-20
by count fascia	-37
by count faucet	22
by count faucet stem	41
by count fell	-5
by count fence	-21
by count fence post	93
by count fine	-7
by count fireplace	-11
by count first	-15
by count first coat	-20
by count flatbed	-35
by count flexible	-12
by count floor	46
by count floor glue	19
by count flooring	17
by count flue	-45
by count foil tape	-14
by count foot	-10
by count form	-27
by count frame	-5
by count framing	-10
by count fridge	-18
by count front	-6
by count full	-15
by count gap	-12
by count garage	-25
by count gary	-40
by count gasket	93
by count gate	-7
by count gfci	46
by count glass	67
by count glue	-30
by count gray	-54
by count grout	59
by count gutter	-39
by count gutter hanger	4
by count hair	-14
by count hall	-13
by count handrail	-40
by count hard	-12
by count hardware	17
by count heat	-11
by count hello	-4
by count high	-6
by count hinge	5
by count hole	-24
by count hose	27
by count hose bib	-48
by count hot	-2
by count house	-23
by count hvac	35
by count insulation	-13
by count island	-28
by count jamb	-40
by count jan	-83
by count joint	-7
by count joint compound	-76
by count joist hanger	53
by count key	-8
by count kit	-44
by count kitchen	-18
by count kitchenette	-12
by count knees	-6
by count ladder	37
by count laminate	-27
by count landing	-10
by count landscape	-48
by count latch	-7
by count ledger	-30
by count leg	-17
by count lid	39
by count light fixture	-13
by count line	-24
by count linen closet	-4
by count live	-6
by count living room	-8
by count lock	-12
by count long	-14
by count loop	-8
by count low	-2
by count luis	-18
by count lumber	-22
by count matte	-22
by count max	-20
by count maybe	-61
by count mesh unit	-19
by count metal flex	-73
by count meter socket	-7
by count middle	-10
by count mirror	-34
by count mortar	-16
by count mullion	-20
by count nail	-53
by count neutral	-3
by count north side	-5
by count nut	-14
by count oak	26
by count office	-15
by count offset	24
by count once	-9
by count one's	-30
by count outlet	-3
by count oven	-5
by count p-trap	55
by count paint	-15
by count paint tray	-80
by count painter's tape	-27
by count paper	12
by count part	-5
by count patch	-11
by count patio door	-41
by count penetrating oil	-15
by count piece	-26
by count pins	-21
by count pipe	-51
by count pipe sleeve	-22
by count plaster	49
by count plastic bucket	-29
by count plenty	-4
by count plumbing	3
by count plywood	10
by count porch	-17
by count primed	-19
by count primer	73
by count pump	-16
by count push	-9
by count rack	-2
by count radiator	-21
by count rafter	-51
by count rail bracket	-5
by count rain	-10
by count range	-6
by count range hood	16
by count ready	-10
by count rear	-18
by count recessed light	12
by count register	18
by count regulator	57
by count rental	-2
by count report	-3
by count reveal	-3
by count right	-39
by count rise	-5
by count riser	-40
by count robe hook	18
by count rock	-26
by count roller cover	-59
by count roof	-3
by count roof boot	12
by count roofing	16
by count rough	-8
by count rough opening	-35
by count round	-20
by count row	-12
by count runner	78
by count salon	-21
by count sand	62
by count sash	-26
by count sconce	-5
by count screw	-47
by count screwdriver	-9
by count sealer	-13
by count seam	-12
by count second	-13
by count second fix	-3
by count shed	-50
by count sheet	-5
by count shelf	-59
by count shelf pin	40
by count shelf support	24
by count shim	-7
by count shingle	22
by count shoe molding	-30
by count shop	-20
by count shower	-44
by count shower pan	-12
by count shutoff valve	-20
by count siding	-19
by count silicone	-17
by count sill	-55
by count sink	-25
by count slab	-11
by count sliding door track	-35
by count slope	-19
by count smoke detector	42
by count soffit	-8
by count soft close	67
by count solid	-9
by count somebody's	-4
by count sorry	-9
by count spray foam	-58
by count spring	-8
by count stain	-26
by count stair	-26
by count stair nose	57
by count stair tread	8
by count step	-38
by count still	-43
by count stock	-73
by count store	-6
by count straight	-16
by count strap tie	-28
by count street	-12
by count strike plate	67
by count stud	-59
by count subfloor	63
by count supply line	76
by count switch	78
by count tall	-3
by count tape	-18
by count temperature	-11
by count thinset	108
by count third	-13
by count threshold	52
by count tight	-4
by count tile	48
by count toe kick	-40
by count together	-25
by count toggle bolt	-30
by count toilet	-10
by count toilet seat	-18
by count top's	-7
by count towel bar	-53
by count transition strip	-22
by count trim	-37
by count truck	-22
by count tub	-3
by count tub spout	-43
by count tube	-14
by count tv	-10
by count twice	-3
by count undefined	-18
by count underside	-5
by count upstairs	22
by count vanity	-11
by count vanity light	-29
by count vanity top	-3
by count varnish	-28
by count vent	-79
by count vent pipe	-26
by count vinyl plank	51
by count wainscot	-10
by count wall	-20
by count wall cabinet	7
by count washer	-23
by count water	-9
by count wax ring	-20
by count what	-15
by count whip	-27
by count white	-46
by count wide	-16
by count wind	-11
by count window	15
by count window screen	75
by count wire mesh	-19
by count wood filler	-7
by count wood glue	-32
by count wrong	-18
by count yet	-5
by each already	-33
by each appliances	-25
by each door	-46
by each door knob	-71
by each doors	-62
by each drywall	7
by each electrical	-30
by each flooring	79
by each hall	-4
by each hardware	-9
by each hvac	-37
by each kitchen	-4
by each lumber	-8
by each paint	-20
by each plumbing	-40
by each right	-12
by each roofing	29
by each screw	84
by each tape	-4
by each tile	50
by each truck	-9
by each undefined	-28
by each wall	-25
by ft appliances	-20
by ft baseboard	4
by ft concrete	-3
by ft door	-15
by ft drywall	11
by ft duct	82
by ft edge	-31
by ft electrical	-28
by ft exhaust fan	-2
by ft glue	-3
by ft hall	-12
by ft hardware	41
by ft hvac	30
by ft lumber	-17
by ft maybe	-7
by ft paint	37
by ft panel	-10
by ft plumbing	21
by ft right	-3
by ft roofing	35
by ft sash cord	81
by ft still	-20
by ft tile	22
by ft undefined	-55
by gal bleach	-4
by gal board	-35
by gal cabinet pull	-15
by gal caulk	-5
by gal ceiling	37
by gal coat	21
by gal concrete	44
by gal dining room	-14
by gal doors	-10
by gal drywall	-11
by gal edge	-7
by gal eggshell	70
by gal electrical	-18
by gal first	-3
by gal first coat	60
by gal flooring	-40
by gal hardware	13
by gal kids room	73
by gal living room	-15
by gal lumber	-16
by gal matte	-20
by gal maybe	87
by gal paint	11
by gal plumbing	-2
by gal primer	-21
by gal satin	26
by gal stain	25
by gal still	-7
by gal tape	-27
by gal tile	-33
by gal trim	-22
by gal undefined	16
by gal wall	-49
by gal walnut	32
by gal wood glue	90
by kg undefined	65
by kit doors	-50
by kit epoxy	78
by kit hardware	-27
by kit undefined	-43
by lb hardware	61
by lb lumber	-27
by lb screw	68
by lb undefined	-22
by length baseboard	42
by length casing	9
by length hardware	-35
by length lumber	60
by length undefined	-14
by m baseboard	48
by m doors	-21
by m electrical	48
by m lumber	19
by pack appliances	-10
by pack doors	-10
by pack electrical	81
by pack hardware	27
by pack lumber	-16
by pack outlet	-16
by pack paint	-21
by pack plumbing	7
by pack screw	22
by pack undefined	-6
by pail undefined	-30
by pair doors	66
by pair electrical	-21
by pair hardware	24
by pair undefined	-91
by pointer doors	-61
by pointer electrical	68
by pointer hardware	23
by pointer lumber	-64
by pointer plumbing	29
by pointer undefined	-22
by pt undefined	-15
by qt concrete	-9
by qt doors	-47
by qt electrical	-12
by qt first coat	-2
by qt hardware	-38
by qt lumber	-73
by qt maybe	47
by qt paint	64
by qt patch	-16
by qt plumbing	-6
by qt tile	-26
by qt trim	-19
by qt undefined	3
by qt wall	-12
by roll already	-3
by roll ceiling	-8
by roll concrete	46
by roll corner	-45
by roll doors	-26
by roll drywall	-34
by roll edge	-2
by roll electrical	-17
by roll floor	-13
by roll flooring	6
by roll hardware	65
by roll hvac	-12
by roll joint compound	-18
by roll joist	-28
by roll lumber	-61
by roll maybe	-25
by roll paint	-17
by roll plumbing	-17
by roll plywood	-32
by roll primer	-25
by roll roofing	-22
by roll slope	-4
by roll tape	63
by roll undefined	-6
by roll wall	-5
by roll window	-2
by set hardware	5
by set undefined	7
by sheet ceiling	-4
by sheet concrete	-19
by sheet doors	-7
by sheet drywall	100
by sheet edge	-6
by sheet electrical	-8
by sheet floor	-6
by sheet hardware	-33
by sheet lumber	-20
by sheet paint	21
by sheet plumbing	-72
by sheet plywood	31
by sheet roofing	-27
by sheet subfloor	-8
by sheet tape	-25
by sheet tile	69
by sheet undefined	-60
by sheet wall	-17
by sleeve paint	-46
by sleeve undefined	-66
by sq ft undefined	-66
by stick doors	-6
by stick glue	-15
by stick hardware	33
by stick lumber	27
by stick paint	-15
by stick plumbing	38
by stick undefined	-66
by stick wall	-7
by tin lumber	-11
by tin paint	19
by tin undefined	-15
by tub undefined	-25
by tube 2x	-4
by tube again	-11
by tube appliances	-9
by tube baseboard	-22
by tube cabinet pull	-8
by tube caulk	-14
by tube concrete	-15
by tube construction adhesive	93
by tube doors	-21
by tube drywall	-16
by tube edge	-4
by tube electrical	-32
by tube flooring	-74
by tube fridge	-10
by tube gap	-26
by tube glue	-5
by tube grout	-7
by tube hardware	-19
by tube hole	-5
by tube hvac	-12
by tube lumber	-41
by tube paint	17
by tube panel	-4
by tube plumbing	-56
by tube plywood	-3
by tube seam	-2
by tube silicone	72
by tube still	-56
by tube stud	-8
by tube tile	-53
by tube undefined	3
by tube wall	-2
by tube water	-2
by tube window	-22
by tube wood glue	33
by yd undefined	-23
capital false	-5
capital true	-13
counted	-9
counted area	10
counted finish	-42
counted fixture	16
counted material	-10
counted part	-26
counted surface	-10
counted tool	35
counted word	27
cut longer	-8
cut longer article	-14
cut longer bare	31
cut longer count	-28
cut longer length	3
cut longer named false ends number	-36
cut longer named false ends part	14
cut longer named false ends verb	72
cut longer named false ends word	-18
cut longer named true ends area	13
cut longer named true ends defect	-39
cut longer named true ends finish	34
cut longer named true ends fixture	-51
cut longer named true ends material	-2
cut longer named true ends number	-4
cut longer named true ends part	15
cut longer named true ends role	-28
cut longer named true ends surface	-25
cut longer named true ends tool	-31
cut longer named true ends verb	-9
cut longer named true ends word	-18
cut longer pack	-3
cut longer size 1	-6
cut longer size 2	-3
cut longer size 3	18
cut longer size 4	-10
cut longer size 5	-27
cut longer size 6	-29
cut longer size 7	-42
cut longer volume	-46
cut new	-6
cut new article	54
cut new count	-11
cut new length	28
cut new named false ends defect	37
cut new named false ends finish	13
cut new named false ends fixture	63
cut new named false ends material	97
cut new named false ends number	-41
cut new named false ends part	81
cut new named false ends surface	-46
cut new named false ends tool	-27
cut new named false ends verb	-46
cut new named false ends word	-43
cut new pack	-32
cut new pointer	19
cut new size 1	-16
cut new size 2	40
cut new size 3	18
cut new size 4	-22
cut new size 5	-7
cut new size 6	-23
cut new size 7	-6
cut new volume	-18
cut same	23
cut same area	33
cut same article	-3
cut same count	9
cut same length	18
cut same named false ends area	-80
cut same named false ends finish	-6
cut same named false ends material	71
cut same named false ends number	-35
cut same named false ends word	-93
cut same named true ends area	-50
cut same named true ends defect	-24
cut same named true ends finish	-35
cut same named true ends fixture	19
cut same named true ends material	34
cut same named true ends number	-73
cut same named true ends part	41
cut same named true ends surface	25
cut same named true ends tool	72
cut same named true ends verb	17
cut same named true ends word	15
cut same pack	36
cut same pointer	86
cut same size 1	20
cut same size 2	37
cut same size 3	-4
cut same size 4	68
cut same size 5	-4
cut same volume	78
cut same weight	51
cut shorter	-11
cut shorter article	-26
cut shorter bare	-35
cut shorter count	19
cut shorter length	29
cut shorter named false ends area	-11
cut shorter named false ends finish	4
cut shorter named false ends word	-21
cut shorter named true ends area	-38
cut shorter named true ends defect	-39
cut shorter named true ends finish	-22
cut shorter named true ends fixture	16
cut shorter named true ends material	41
cut shorter named true ends number	-33
cut shorter named true ends part	12
cut shorter named true ends surface	40
cut shorter named true ends tool	57
cut shorter named true ends verb	-21
cut shorter named true ends word	-50
cut shorter pack	-12
cut shorter size 1	-16
cut shorter size 2	19
cut shorter size 3	7
cut shorter size 4	16
cut shorter volume	-51
cuts nouns	8
did buy imperative	-25
did buy past	38
did buy present	-46
did have imperative	-2
did have past	8
did have present	-4
did measure imperative	-55
did measure modal	-82
did measure owed	-100
did measure past	-15
did measure present	-60
did move imperative	-96
did move modal	-27
did move owed	-33
did move past	13
did move present	18
did need modal	-15
did need owed	22
did need past	-22
did need present	-36
did null copula	6
did null imperative	34
did null modal	-8
did null owed	-29
did null present	43
did other copula	-8
did other imperative	9
did other modal	-23
did other owed	16
did other past	10
did other present	8
did say imperative	-38
did say past	-64
did say present	6
did see imperative	31
did see modal	-24
did see owed	-2
did see past	-12
did see present	-56
did use past	10
did use present	10
did work imperative	-5
did work modal	8
did work owed	-36
did work past	-7
did work present	-3
done	8
done article	-34
done length	-32
done pack	15
done volume	48
ends area	-51
ends area next finish	-43
ends area next mark	-15
ends area next part	-7
ends area next verb	7
ends area next word	-29
ends defect	-25
ends defect next mark	-36
ends defect next word	-26
ends finish	-12
ends finish next #	-36
ends finish next Q length	44
ends finish next Q null	-26
ends finish next finish	-25
ends finish next mark	-16
ends finish next material	3
ends finish next verb	22
ends finish next word	-22
ends fixture	17
ends fixture next defect	12
ends fixture next mark	-44
ends fixture next material	-23
ends fixture next part	-24
ends fixture next verb	18
ends fixture next word	45
ends joined	31
ends material	41
ends material next #	87
ends material next Q length	-19
ends material next Q null	61
ends material next break	40
ends material next defect	39
ends material next finish	30
ends material next mark	19
ends material next material	27
ends material next number	36
ends material next part	-2
ends material next surface	21
ends material next time	27
ends material next tool	-18
ends material next verb	30
ends material next word	45
ends number	-75
ends number next #	-24
ends number next mark	-67
ends number next material	-10
ends number next verb	-9
ends number next word	-56
ends part	47
ends part next #	-48
ends part next Q count	11
ends part next Q null	144
ends part next defect	19
ends part next mark	82
ends part next material	20
ends part next part	-29
ends part next surface	22
ends part next verb	45
ends part next word	13
ends plural article	-72
ends plural bare	66
ends plural count	72
ends plural pack	70
ends plural pointer	38
ends plural weight	16
ends role	-34
ends role next verb	-16
ends role next word	-22
ends surface	13
ends surface next Q length	-27
ends surface next mark	-45
ends surface next verb	-33
ends surface next word	54
ends tool	45
ends tool next mark	-29
ends tool next word	78
ends verb	-11
ends verb next #	9
ends verb next Q length	-13
ends verb next Q null	-56
ends verb next break	11
ends verb next defect	23
ends verb next mark	-4
ends verb next material	-17
ends verb next part	-4
ends verb next verb	19
ends verb next word	-22
ends word	-28
ends word adhesive	41
ends word anchors	34
ends word angle	55
ends word around	-4
ends word back	-16
ends word bag	-30
ends word base	40
ends word black	-20
ends word blade	76
ends word blocks	15
ends word blue	17
ends word board	40
ends word bolt	57
ends word bolts	52
ends word box	-43
ends word boxes	-56
ends word bracket	24
ends word brackets	-14
ends word brads	29
ends word brass	-25
ends word bring	-31
ends word brushes	36
ends word cab	-20
ends word cabinet screws	23
ends word cable	-78
ends word cap	25
ends word casing	25
ends word caulk	71
ends word clamps	73
ends word clear	8
ends word clips	32
ends word color	-8
ends word copper	20
ends word corner	12
ends word couplings	-50
ends word cover	128
ends word covers	109
ends word cracked	-28
ends word cut	-79
ends word deck screws	26
ends word door	7
ends word doors	-45
ends word drain	-78
ends word drywall	-13
ends word eggshell	44
ends word elbow	20
ends word elbows	52
ends word em	-3
ends word enamel	10
ends word end caps	-10
ends word epoxy	24
ends word extra	-4
ends word filter	23
ends word filters	52
ends word fitted	-34
ends word flat	-69
ends word flex	-28
ends word foam	58
ends word gap	39
ends word gasket	28
ends word glass	22
ends word glue	46
ends word glued	-27
ends word gone	-26
ends word good	-19
ends word got	-12
ends word gray	20
ends word grout	-30
ends word half	-16
ends word hall	-36
ends word hangers	80
ends word head	24
ends word hinge	-34
ends word hinges	35
ends word hose	18
ends word hung	-43
ends word joint	14
ends word kind	-12
ends word kit	62
ends word kitchen	-56
ends word knobs	13
ends word ladder	13
ends word lags	26
ends word last	-6
ends word leaning	-21
ends word left	-49
ends word lid	-3
ends word lock	-5
ends word long	-50
ends word longer	-54
ends word mastic	28
ends word mesh	69
ends word mesh tape	11
ends word missing	-10
ends word more	-39
ends word mortar	62
ends word mud	15
ends word next	-32
ends word next #	-38
ends word next Q length	64
ends word next Q null	-81
ends word next Q pack	-8
ends word next area	-48
ends word next break	-44
ends word next defect	-56
ends word next fixture	-11
ends word next mark	26
ends word next material	-19
ends word next number	-58
ends word next part	-22
ends word next surface	-34
ends word next verb	-39
ends word next word	-17
ends word nos	-93
ends word number	-35
ends word old	-16
ends word one	-49
ends word ones	-85
ends word or	-4
ends word order	-9
ends word p	-5
ends word panel	-18
ends word panels	43
ends word piece	-15
ends word pins	29
ends word pipe	-54
ends word plate	43
ends word plates	19
ends word plenty	-54
ends word plugs	19
ends word plus	-32
ends word poly	17
ends word posts	53
ends word primer	33
ends word pulls	30
ends word pump	40
ends word putty	40
ends word red	-5
ends word remain	-11
ends word replaced	-20
ends word ring	111
ends word rods	44
ends word roller	47
ends word same	-38
ends word satin	-4
ends word says	-42
ends word screw	112
ends word screws	110
ends word seal	-6
ends word sealant	24
ends word sealer	21
ends word second	-42
ends word set	-42
ends word shelves	-4
ends word shims	17
ends word short	-42
ends word side	-47
ends word silicone	57
ends word sitting	-20
ends word spacer	-42
ends word spare	-38
ends word square	-95
ends word stain	3
ends word stainless	-23
ends word still	-41
ends word straight	-9
ends word structural screws	95
ends word studs	14
ends word swapped	-19
ends word tape	38
ends word taped	18
ends word thick	-12
ends word thinset	40
ends word third	-27
ends word through	-11
ends word tile	49
ends word tiles	28
ends word toggles	17
ends word trap	10
ends word treads	29
ends word tub	-76
ends word unopened	-39
ends word used	-8
ends word varnish	19
ends word vent	-34
ends word wall	19
ends word walnut	6
ends word wanted	-38
ends word washer	-24
ends word washers	49
ends word water	17
ends word wax	87
ends word wax ring	35
ends word white	-27
ends word wood	3
ends word x	-81
flawed false	71
flawed true	8
fuller	26
fuller article 1	-53
fuller back 0	-3
fuller back 1	84
fuller back 2	31
fuller back 3	8
fuller back 4	-64
fuller bare 1	-22
fuller by 1 to 1	-4
fuller by 1 to 2	-7
fuller by 2 to 1	21
fuller count 1	-13
fuller count 2	13
fuller head material	-24
fuller head part	-111
fuller head word	122
fuller part part	-21
fuller word material	-81
fuller word part	-89
fuller word word	84
goods false	-36
goods false false	-46
goods false true	-26
goods true	20
goods true false	43
head 18/2	-84
head 1x4	-60
head 1x8	-10
head 2x	-8
head 2x10	-12
head 2x4	-19
head 2x6	-53
head 2x8	-74
head absent	92
head abt	-3
head accent wall	-29
head access panel	5
head acoustic ceiling tile	7
head acrylic	15
head afternoon	-8
head again	-19
head air	-8
head air filter	48
head almond	-29
head alone	-3
head already	-54
head alright	-5
head aluminum	3
head anti	-6
head anybody	-12
head apart	-6
head arm	-18
head arvo	-28
head aside	-5
head attic	-10
head attic stair	-5
head away	-14
head back bedroom	-5
head backer board	16
head backsplash	-12
head bags	-52
head ball valve	-47
head baluster	54
head band	26
head bar	29
head base cabinet	27
head base coat	-29
head baseboard	78
head basement	-21
head basket strainer	48
head bath	-11
head bathroom	-15
head battery	50
head beadboard	16
head beam	-16
head bed	-12
head bedroom	-14
head bedroom one	-27
head bench	-13
head better	-5
head bifold	-44
head big	-10
head black	-51
head black pipe	16
head blade	30
head blank cover	-23
head bleach	-16
head bled	-4
head blind	92
head blocking	35
head blower assembly	54
head blown insulation	14
head blue	11
head board	85
head boards	9
head bolt	56
head bone	-4
head bookcase	-18
head bottom	-25
head bottom plate	36
head bowl	-6
head box room	-3
head bracket	-11
head brass	6
head breaker	104
head brick	30
head brine tank	-70
head brown	-8
head bulb	62
head bulkhead	-3
head cab	4
head cabinet	-3
head cabinet pull	66
head cable	36
head camera	-12
head cams	-3
head carpet	-32
head carpet pad	-13
head cartridge	4
head case	-7
head casing	-40
head cast iron pipe	-17
head cat	-3
head cat6 cable	-13
head caulk	-19
head cavity	-15
head cedar	30
head ceiling	19
head ceiling fan	-21
head ceiling grid	-9
head cement	-10
head center	-9
head centers	35
head centre	-6
head centres	-32
head ceramic tile	-56
head chain	15
head channel	5
head chase	-9
head chimney	-44
head chunk	-2
head circuit	-27
head circular saw	14
head clearance	-3
head cleat	18
head clip	-12
head closet	-49
head closet bolt	-3
head closet flange	-30
head closet kit	-64
head closet rod	12
head cock	82
head code	-4
head cold	-10
head color	-8
head column	-35
head concrete	-40
head concrete sealer	90
head conduit strap	-6
head construction adhesive	52
head contractor	-4
head cooktop	-26
head copper pipe	-78
head corner	38
head corner bead	133
head counter	-44
head countertop	-71
head course	-13
head cover plate	71
head crawlspace	-5
head crazy	-16
head crown molding	-23
head ctr	-5
head curbing	-48
head curtain rod	-4
head cutout	-21
head damper	-16
head data drop	-83
head dave	-3
head daylight	-13
head dealer	-25
head deck	44
head deck screw	39
head deep	-18
head dehu	-7
head delivery	10
head demolition	-22
head desk	-22
head dime	-10
head dimmer	37
head dining room	-22
head disconnect	-16
head discs	-15
head dishwasher	-2
head disposal	-11
head dobie	-15
head dog	-5
head door	-43
head door buck	-4
head door closer	63
head door glide	-54
head door knob	-24
head door seal	46
head door stile	-19
head door stop	31
head door sweep	55
head doorway	-24
head double	-18
head downspout	-5
head downstairs	-15
head draft	-71
head drain	-30
head drawer	-38
head drawer front	27
head drawer slide	15
head drill bit	-62
head drip edge	-13
head driveway	-31
head drop cloth	2
head drum	-4
head dryer	-59
head dryer vent	-44
head drywall	-10
head duct	36
head duct boot	14
head due	-9
head dumpster	-33
head edge	-22
head edge banding	14
head eggshell	46
head egress window	-17
head elbow	-31
head electric	-2
head elevator	-4
head else	-5
head enamel	39
head end cap	-16
head end panel	-58
head enough	7
head entry	-9
head epoxy	49
head evaporator coil	-33
head even	-15
head ever	-27
head everywhere	-6
head except	-33
head exhaust fan	-21
head expansion tank	43
head exterior	91
head exterior door	-32
head extra	-5
head face	-62
head face frame	-8
head far	-22
head fascia	-37
head faucet	18
head faucet stem	-44
head fell	-7
head fella	-11
head felt	-18
head felt pad	-10
head fence	-32
head fence post	55
head fifth	-4
head filler strip	87
head fine	-12
head finger	-7
head finish nail	-6
head fire caulk	41
head fireplace	-17
head first	65
head first coat	17
head flashing	-2
head flatbed	-40
head flexible	60
head floor	8
head floor glue	36
head floor heating mat	-26
head flue	-67
head foam	57
head foil	-9
head foil tape	48
head foot	-10
head footing	-11
head form	-48
head fourth	-19
head frame	-7
head framing	-13
head fridge	-30
head front	-32
head front bedroom	-2
head full	-24
head furnace	-21
head furniture	-5
head gable	-9
head gap	-24
head garage	-18
head garage door	66
head gary	-40
head gary's	-16
head gas supply	-15
head gasket	52
head gate	-56
head gfci	43
head girls	-6
head glass	57
head glue	-28
head god	-29
head gpg	-13
head gravel	62
head gray	108
head gridline	-9
head grinder	-14
head grout	16
head guard	107
head guest room	-6
head gutter hanger	-5
head hair	-14
head half bath	-3
head halfway	36
head hall	-19
head handrail	-53
head hard	-38
head hardness	-13
head hardware	-33
head hardwood	-62
head heat	-25
head height	-4
head height's	-6
head hello	-23
head hex key	-3
head high	-8
head hinge	4
head hinge screw	45
head hola	-3
head hole	-24
head home	-25
head hose	37
head hose bib	33
head hot	-2
head house	-34
head how	-17
head humidity	-10
head inch	25
head insulation	12
head island	-35
head itself	-10
head j bend	-52
head j channel	75
head jack	-10
head jack stud	-5
head jamb	-55
head jan	-82
head jess	-18
head joint	-20
head joint compound	-5
head joist	-49
head joist hanger	53
head junction box	-2
head key	-8
head kids room	49
head kind	-39
head kit	-49
head kitchen	-18
head kitchenette	-27
head knee wall	-3
head knees	-7
head ladder	30
head lag bolt	-7
head laminate	64
head landing	-25
head latch	-19
head laundry room	-8
head laundry sink	-2
head leaf	-2
head led	-30
head ledger	-37
head left hand	-22
head leg	-28
head length	-28
head lid	-10
head light fixture	-64
head lime	-73
head line	2
head linen closet	-6
head lineset	-16
head linkage	-9
head lint	-15
head list	-9
head live	-11
head living room	-26
head load	-12
head lock	35
head locker	-17
head long	-35
head longer	-6
head loop	-8
head low	-30
head luis	-18
head lumber	-29
head lunch	-2
head lvl	10
head machine	-3
head man	-18
head maple	-4
head marco	-26
head masonry anchor	3
head master bath	-6
head mat	-7
head matte	-50
head max	-19
head maybe	-46
head meantime	-6
head melamine	-64
head mesh unit	-26
head metal flex	12
head meter socket	-58
head microwave	-3
head middle	-17
head mind	-10
head mini split	-3
head mirror	-10
head model	-5
head mortar	7
head mosaic	67
head much	-20
head mud room	-2
head mullion	-20
head nail	-35
head nail hole	-12
head nail plate	36
head nailer	-22
head natural	-32
head neutral	-3
head newel post	21
head news	-12
head nice	-9
head niche	-28
head night	-3
head noon	-24
head north side	-7
head north wall	-5
head nos	-3
head nowhere	-4
head numbers	-12
head nut	-8
head oak	50
head office	-45
head offset	24
head once	-21
head one's	-35
head orange	-13
head outlet	-30
head oven	-26
head overhang	-5
head p-trap	28
head paddock	-17
head paint	-10
head paint tray	-23
head painter's tape	28
head pair	-19
head panel	20
head pantry	-8
head paper	16
head parquet	-11
head part	-5
head party wall	-5
head patch	61
head patio door	-61
head paver	72
head penetrating oil	10
head pete's	-10
head picket	85
head piece	-33
head pieces	22
head pins	-20
head pipe	-56
head pipe sleeve	-43
head planer	-5
head plaster	32
head plastic bucket	-114
head plate compactor	-11
head plenty	-9
head plywood	16
head pocket door	78
head porch	-24
head post base	-21
head power cord	-60
head primed	4
head primer	85
head profile	10
head pump	-21
head push	-10
head quiet	-25
head quikrete	47
head rabbet	-2
head rack	-10
head radiator	-58
head rafter	-90
head rafter vent	-21
head rail bracket	-8
head rain	-56
head range	-87
head range hood	8
head range hood vent	-3
head ready	-28
head rear	-23
head reception	-3
head red	-65
head register	43
head regulator	53
head remains	-5
head rental	-10
head repair kit	-15
head report	-8
head reroof	-53
head restaurant	-7
head retaining wall	-5
head reveal	-16
head rick	-3
head ridge	-2
head ridge vent	-11
head right	-34
head right hand	-9
head rim joist	-15
head rise	-7
head riser	-46
head robe hook	44
head rock	-43
head roller cover	-104
head roof	-27
head roof boot	12
head rooftop unit	-10
head rough	77
head rough opening	-52
head round	-35
head row	-16
head rubber	123
head rung	-15
head runner	74
head salon	-21
head sand	-41
head sandpaper	95
head sash	-87
head sash cord	76
head satin	12
head sconce	-6
head screed	-3
head screed board	-33
head screwdriver	-19
head sealant	-18
head sealer	16
head seam	-14
head second	19
head second fix	-3
head second floor	-3
head self	83
head self leveler	109
head setting compound	-18
head shd	-6
head shed	-48
head sheet	-7
head sheet vinyl	11
head shelf	-69
head shelf pin	38
head shelf support	24
head shingle	32
head shoe molding	-59
head shop	-24
head shower	-66
head shower curb	-3
head shower door	71
head shower pan	-31
head shutoff valve	-21
head siding	-13
head silicone	28
head sill	-46
head silver	-18
head sink	-44
head sir	-6
head site	-10
head slab	-28
head slat wall	17
head slate	-83
head slid	-6
head sliding door track	-55
head slope	-20
head smoke detector	13
head soffit	-21
head soft close	63
head solid	-31
head somebody's	-5
head somewhere	-3
head sorry	-9
head spare	-25
head speaker wire	116
head spec	-16
head spray foam	-20
head spring	-16
head sprinkler head	-39
head stain	-6
head stain blocker	64
head stained	-4
head stainless	-9
head stair	-21
head stair nose	-12
head stair skirt	-3
head stair tread	-32
head stairwell	-11
head staple	-64
head static	-13
head steel column	-20
head step	-35
head still	-53
head stock	37
head stone veneer	35
head store	-75
head storm door	52
head straight	-16
head strap tie	-32
head street	-19
head strike plate	28
head string	-7
head stringer	-10
head strong	-5
head structural screw	-57
head stucco	68
head stud	-62
head studio	-2
head subfloor	-49
head sump pump	-22
head sun	-6
head sunroom	-5
head supply line	86
head supposed	-28
head sweet	-5
head switch	25
head tack strip	61
head tae	-6
head tag	-30
head tall	-5
head tank	-19
head tapcon	-14
head tape	-36
head tee	-29
head temperature	-21
head thermostat	-3
head thick	-73
head thinset	54
head third	-32
head thirds	-64
head threshold	36
head tight	-5
head tile	-16
head tile spacer	24
head tilt	-2
head toe kick	-42
head together	-24
head toggle bolt	-53
head toilet	-19
head toilet seat	-18
head top's	-7
head towel bar	30
head tpr	-6
head transition strip	68
head trash pullout	-10
head traveler	-5
head treated	-4
head trim	-20
head truck	-16
head trunk	-59
head tub	-41
head tub spout	-62
head tub surround	-77
head tube	41
head tubes	82
head tv	-10
head twice	-10
head type	-25
head uncoupling membrane	25
head underlayment	-22
head underside	-5
head upstairs	11
head upstairs hall	-14
head utility knife	-48
head vacuum	-8
head valley	-17
head vanity	-5
head vanity light	-32
head vanity top	-17
head varnish	13
head vent	-108
head vent hood	-20
head vent pipe	-29
head vinyl plank	72
head wainscot	-50
head waiting area	-8
head wall	-30
head wall cabinet	39
head wallpaper	23
head walnut	-12
head washer	-51
head washer box	-23
head water	-18
head water heater	-11
head water pressure	20
head wax	-14
head wax ring	-23
head weatherstrip	137
head weight	-19
head weld	-8
head wet room	-3
head what	-43
head whip	-2
head white	-25
head white paint	13
head whoever	-5
head why	-4
head wide	-37
head wind	-14
head window	-40
head window bench	-44
head window screen	64
head wire mesh	-34
head wire nut	-17
head wood filler	33
head wood glue	-28
head wool	68
head wrong	-38
head yard	-14
head yellow	-37
head yet	-10
head you'd	-18
head zone	-4
in Q count	-31
in Q length	-16
in Q null	-29
in area	9
in defect	36
in finish	55
in fixture	7
in material	-9
in number	27
in part	-16
in role	-80
in surface	24
in tool	-31
in verb	29
in word	11
kind area	-20
kind area article	28
kind area count	-28
kind area length	-30
kind area pack	-20
kind area pointer	-27
kind area volume	13
kind area weight	-21
kind code	-3
kind defect	-9
kind defect count	-3
kind defect pack	-8
kind finish	41
kind finish article	-103
kind finish count	15
kind finish length	55
kind finish pack	28
kind finish volume	77
kind fixture	-20
kind fixture article	-4
kind fixture count	-15
kind fixture length	-40
kind fixture pack	-22
kind fixture pointer	-67
kind fixture volume	-35
kind material	20
kind material area	99
kind material article	-28
kind material count	15
kind material length	47
kind material pack	30
kind material volume	-20
kind material weight	-11
kind part article	-2
kind part count	21
kind part length	-11
kind part pack	-25
kind part pointer	24
kind part volume	-38
kind part weight	-39
kind surface	-16
kind surface area	-8
kind surface article	-20
kind surface count	-11
kind surface length	-43
kind surface pack	-28
kind surface pointer	45
kind surface volume	-5
kind surface weight	-42
kind tool	3
kind tool article	85
kind tool count	22
kind tool length	-26
kind tool pack	-42
kind tool volume	-18
kind word	-13
kind word area	-103
kind word article	-33
kind word count	-12
kind word length	-27
kind word pack	2
kind word pointer	-50
kind word volume	-26
kind word weight	-21
kind work	-19
kind work count	-9
kind work pack	-21
label	26
lead 	10
lead a	28
lead a article	28
lead a new	-13
lead an	-38
lead an article	-38
lead em count	-91
lead more	-25
lead more count	-25
lead new	26
lead new article	-9
lead new count	31
lead of	50
lead of count	-6
lead of em	-91
lead of length	5
lead of pack	57
lead of that	-56
lead of the	90
lead of volume	64
lead of weight	19
lead that pack	38
lead the	-161
lead the article	-51
lead the count	-42
lead the length	35
lead the pack	-14
lead the volume	9
lead undefined count	11
lead undefined length	41
lead undefined pack	-18
lead undefined volume	42
lead undefined weight	8
like told 1	-25
like told 2	-51
like told 3	-3
meant article false	-32
meant count false	2
meant count true	-24
meant false false	-5
meant false true	23
meant pointer false	-14
meant pointer true	-47
meant true true	-25
modified	23
more area	-35
more finish	93
more fixture	-53
more material	37
more part	31
more surface	-31
more tool	33
more word	13
never told false	8
never told true	-18
next #	10
next &	17
next (	-41
next +	48
next ,	-7
next .	22
next ;	51
next Q count	46
next Q current	-3
next Q length	35
next Q pack	-13
next Q volume	-37
next Q weight	57
next a	56
next all	-74
next and	48
next are	-25
next around	16
next at	19
next back	51
next because	32
next before	20
next box	-23
next break	-6
next but	-2
next came	-3
next color	12
next cut	65
next defect	31
next do	-100
next down	-12
next each	47
next finish	-29
next fitted	31
next fixture	-33
next for	50
next from	56
next get	-6
next glued	-27
next gone	23
next got	67
next has	-36
next have	35
next he	-26
next here	-10
next hung	44
next i	-42
next i'll	-8
next i'm	23
next in	8
next is	9
next it	-29
next kind	-11
next kit	-40
next left	111
next mark	12
next material	-9
next me	35
next needed	64
next no	-45
next not	18
next now	46
next number	-5
next of	-90
next on	27
next ones	-41
next out	44
next over	-51
next part	-56
next piece	35
next please	50
next plus	20
next replaced	39
next ring	5
next role	95
next says	-58
next short	64
next so	-6
next still	28
next surface	-24
next that	53
next the	-8
next there	-2
next there's	23
next they	25
next through	43
next time	72
next to	3
next too	7
next tool	-13
next up	-47
next used	22
next verb	12
next was	-49
next went	71
next were	36
next with	27
next word	13
not sold so	-41
of -	-6
of about	-54
of above	-2
of after	-23
of around	-7
of at	-44
of before	-5
of behind	-14
of below	-28
of between	-50
of by	-20
of down	-14
of for	-8
of from	-22
of in	-17
of into	-17
of near	-8
of of	15
of off	-14
of on	-25
of out	-12
of over	-27
of through	-11
of to	-25
of under	-9
of up	-11
of with	-8
opens area	-31
opens defect	89
opens finish	8
opens fixture	32
opens material	30
opens number	22
opens part	54
opens surface	20
opens tool	94
opens verb	-46
opens word	-22
opens word adhesive	21
opens word angle	77
opens word base	38
opens word board	-53
opens word boards	-34
opens word bolts	30
opens word brackets	-31
opens word brads	9
opens word cabinet screws	21
opens word cap	20
opens word casing	16
opens word clamps	60
opens word clear	59
opens word clips	18
opens word couplings	-49
opens word deck screws	11
opens word door	21
opens word doors	-63
opens word drain	6
opens word eggshell	71
opens word elbows	36
opens word end caps	-17
opens word filter	16
opens word flat	-57
opens word flex	-62
opens word foam	21
opens word gasket	5
opens word glass	13
opens word glue	20
opens word gray	43
opens word hangers	29
opens word hinges	28
opens word kitchen	36
opens word lags	36
opens word last	-4
opens word left	-40
opens word long	13
opens word longer	-5
opens word mastic	13
opens word mesh	13
opens word mesh tape	11
opens word more	-96
opens word mud	9
opens word nos	-93
opens word panels	16
opens word pipe	-63
opens word poly	-28
opens word posts	28
opens word primer	15
opens word satin	-63
opens word screw	49
opens word screws	60
opens word sealant	11
opens word sealer	15
opens word shims	29
opens word short	-35
opens word silicone	17
opens word spacer	27
opens word still	-64
opens word structural screws	5
opens word studs	21
opens word tape	9
opens word thinset	36
opens word tile	28
opens word tiles	11
opens word toggles	8
opens word treads	27
opens word tub	-29
opens word unopened	3
opens word used	-41
opens word washers	47
opens word wax ring	23
opens word white	-62
opens word x	23
other room	-16
over clause area	25
over clause defect	-22
over clause fixture	-21
over clause material	20
over clause part	3
over clause role	-18
over clause surface	-43
over clause verb	7
over clause word	-5
own	17
own article false	-36
own by size	165
own count false	-8
own count true	24
own goods 0	-22
own goods 1	27
own goods 2	41
own goods 3	28
own pointer false	19
own pointer true	47
own pointing false false	-17
own pointing false true	22
own pointing true false	49
own pointing true true	-81
own size 1	5
own size 2	25
own size 3	11
own size 4	3
own size 5	-24
own size 6	-34
own size 7	-43
own unit area	60
own unit article	-8
own unit count	6
own unit length	34
own unit pack	23
own unit pointer	50
own unit volume	27
own unit weight	21
place -	-14
place here	48
place rest	-22
plural false area true	-42
plural false article -	-49
plural false count false	-9
plural false count true	-45
plural false pack -	26
plural false pack false	-12
plural false pack true	-18
plural false pointer -	-42
plural false volume false	-2
plural false weight false	-65
plural false weight true	-10
plural true area true	-14
plural true article -	3
plural true count false	-6
plural true count true	58
plural true length true	-43
plural true pack -	-5
plural true pack false	-8
plural true pack true	-3
plural true pointer -	12
plural true volume false	-62
plural true volume true	14
plural true weight false	34
plural true weight true	27
pointing false	-16
pointing true	22
ran out	71
rank 0	45
rank 0 article	36
rank 0 count	44
rank 0 pointer	87
rank 1	11
rank 1 article	26
rank 1 count	9
rank 1 pointer	58
rank 2 article	38
rank 2 count	-2
rank 2 pointer	-101
rank 3	-18
rank 3 article	-50
rank 3 count	-16
rank 3 pointer	-51
rank 4	-21
rank 4 article	-36
rank 4 count	-20
rank 4 pointer	-32
rank 5	-20
rank 5 article	-31
rank 5 count	-19
rank 5 pointer	-36
rank 6	-45
rank 6 article	-106
rank 6 count	-40
rank 6 pointer	-81
said copula	-2
said imperative	-14
said modal	-19
said owed	-12
said past	-3
said present	-9
same unit	7
sentences 0	31
sentences 1	-47
sentences 2	-34
sentences 3	-35
shares	11
sized	6
sold so	105
told 1	3
told 1 article	-5
told 1 count	31
told 1 length	-29
told 1 pack	-21
told 1 pointer	-9
told 1 weight	-69
told 2	-34
told 2 article	-129
told 2 count	-48
told 2 length	-10
told 2 pack	-3
told 2 volume	41
told 3	-29
told 3 count	-15
told 3 length	-26
told 3 pack	-22
told 3 volume	-14
told before	-2
told bought left	-17
told bought null	-63
told bought null false 1	-57
told bought wants	-23
told by false	-21
told by true	7
told have have	-57
told have left	-27
told have left false 1	-51
told have need	55
told have null	-40
told have null false 1	-22
told have null false 2	-43
told have null false 3	-8
told have null true 1	-4
told have null true 2	-10
told have other	13
told have other false 1	-27
told have other true 1	31
told have use	7
told have use false 1	-14
told have wants	47
told have wants false 1	45
told have wants false 2	-29
told have wants false 3	-16
told have wants true 1	66
told have wants true 2	-36
told have work	13
told have work false 1	8
told have work true 1	17
told here	-55
told need have	9
told need have false 1	-47
told need left	-27
told need left false 1	-5
told need left false 2	-33
told need left true 2	-8
told need move	-39
told need move false 1	-15
told need null	-76
told need null false 1	-66
told need null false 2	-8
told need null true 1	-78
told need null true 2	-16
told need other	-29
told need other false 1	-14
told need other false 2	-15
told need other true 1	12
told need other true 2	-47
told need use	-59
told need use false 1	-19
told need use true 1	-56
told need wants	-56
told need wants false 1	-34
told need wants false 2	-19
told need wants true 1	-81
told need wants true 2	-5
told need work	-55
told need work false 1	-32
told need work false 2	-4
told need work true 1	-39
told returned null	91
told returned other	-10
told returned wants	73
told returned wants true 1	85
told used buy	-24
told used have	-6
told used have true 1	-9
told used left	121
told used left false 1	118
told used left false 2	-36
told used left false 3	-20
told used left true 1	86
told used left true 2	36
told used left true 3	4
told used move false 1	-28
told used need	-20
told used null	-39
told used null false 1	-25
told used null false 2	-15
told used null false 3	-13
told used null true 1	-31
told used null true 2	-22
told used null true 3	-8
told used other	-10
told used other false 1	13
told used other false 2	-7
told used other false 3	-7
told used other true 1	-19
told used other true 2	-11
told used other true 3	-4
told used use	-73
told used use false 1	-44
told used use false 2	-3
told used use true 1	-70
told used wants false 1	26
told used wants false 2	-41
told used wants false 3	14
told used wants true 2	-13
told used wants true 3	-18
told used work	-58
told used work false 1	-3
told used work false 2	-45
told used work true 1	-55
told used work true 2	-17
touches false	45
touches true	8
use buy	-14
use have	-3
use need	9
use use	11
within &	18
within and	-73
within in	-80
within of	132
within on	-56
within out	-33
within the	-57
within up	-33
words 1	-25
words 2	13
words 3	6
`;
