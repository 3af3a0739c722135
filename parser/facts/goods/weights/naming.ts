/** Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one. */
export const NAMING = `
ahead #	-6
ahead 4	31
ahead 5	80
ahead a	-6
ahead about	-24
ahead above	-34
ahead across	5
ahead after	-20
ahead against	-18
ahead ain't	12
ahead all	16
ahead along	24
ahead an	-13
ahead and	-56
ahead another	-46
ahead are	22
ahead area	-42
ahead around	40
ahead b	-19
ahead back	19
ahead before	4
ahead below	-55
ahead between	57
ahead both	-38
ahead by	-8
ahead c	80
ahead can	-63
ahead can't	-17
ahead code	-38
ahead defect	5
ahead didn't	48
ahead don't	-68
ahead down	44
ahead each	-21
ahead em	-26
ahead every	-36
ahead face	-63
ahead fine	-48
ahead finish	11
ahead fixture	-42
ahead for	52
ahead from	23
ahead gonna	10
ahead good	-11
ahead gotta	24
ahead has	-16
ahead hasn't	-17
ahead her	-3
ahead here	15
ahead him	-4
ahead his	-8
ahead house	-27
ahead i'm	24
ahead i've	-34
ahead if	-19
ahead in	20
ahead inside	-32
ahead instead	-25
ahead into	22
ahead is	-6
ahead isn't	-58
ahead it	-34
ahead it's	-11
ahead just	61
ahead low	107
ahead material	4
ahead me	-42
ahead more	-7
ahead must	21
ahead my	52
ahead near	-7
ahead nearly	20
ahead never	-15
ahead new	-40
ahead next	-61
ahead no	8
ahead none	38
ahead not	8
ahead nothing	-14
ahead now	-22
ahead of	-8
ahead off	-47
ahead old	-32
ahead on	24
ahead ones	-69
ahead only	12
ahead or	49
ahead out	-42
ahead over	25
ahead part	-19
ahead past	32
ahead please	-51
ahead r	-28
ahead role	-21
ahead same	-3
ahead she	-12
ahead short	22
ahead since	-30
ahead so	6
ahead some	65
ahead somebody	-23
ahead still	-16
ahead surface	28
ahead than	-84
ahead that	-4
ahead the	-18
ahead them	29
ahead then	-9
ahead there	-65
ahead they	63
ahead this	-12
ahead though	61
ahead through	-45
ahead til	-9
ahead till	-48
ahead to	-4
ahead too	-5
ahead under	-3
ahead underneath	-9
ahead until	61
ahead up	51
ahead v buy	-14
ahead v have	-9
ahead v measure	16
ahead v move	21
ahead v need	-28
ahead v other	14
ahead v return	-48
ahead v say	-31
ahead v see	-38
ahead v use	-21
ahead v work	-4
ahead wasn't	-36
ahead we	57
ahead well	104
ahead were	3
ahead what	-2
ahead when	-3
ahead which	7
ahead whole	-22
ahead will	-35
ahead with	-23
ahead within	-15
ahead without	-12
ahead won't	-11
ahead wont	-23
ahead word	-8
ahead would	41
ahead wouldn't	6
ahead x	-17
ahead you	-10
alone	8
alone area	-5
alone finish	-31
alone fixture	66
alone material	30
alone part	36
alone surface	-22
alone tool	25
alone word	-12
alone work	-16
apart false	-5
apart true	-25
asked add material	-21
asked add part	-18
asked add surface	-34
asked add word	-30
asked arrive surface	-12
asked arrive word	-23
asked ask surface	-43
asked ask word	-94
asked be area	-49
asked be finish	31
asked be fixture	48
asked be material	16
asked be part	37
asked be surface	35
asked be tool	-65
asked be word	-43
asked be work	-10
asked blow word	-21
asked bring area	18
asked bring fixture	11
asked bring material	-22
asked bring part	3
asked bring surface	6
asked bring tool	76
asked bring word	-7
asked burn area	-11
asked burn finish	84
asked burn material	18
asked burn part	-7
asked burn surface	-56
asked burn word	-60
asked buy area	-56
asked buy finish	-9
asked buy fixture	-43
asked buy material	7
asked buy part	32
asked buy surface	-28
asked buy tool	50
asked call area	-22
asked call material	19
asked call part	48
asked call word	-21
asked can surface	-6
asked can word	63
asked change area	-19
asked change fixture	-25
asked change material	-12
asked change part	-10
asked change surface	-41
asked change word	-8
asked come material	-60
asked come word	-74
asked count material	61
asked count surface	-14
asked count word	-72
asked cut area	-11
asked cut fixture	24
asked cut material	75
asked cut surface	37
asked cut word	-61
asked do area	-7
asked do finish	-3
asked do fixture	-45
asked do material	56
asked do part	37
asked do surface	-4
asked do word	-29
asked drive material	11
asked drive surface	-3
asked dump word	-4
asked figure area	-3
asked figure finish	-8
asked figure fixture	-14
asked figure material	38
asked figure part	-16
asked figure surface	-4
asked figure word	-19
asked fill material	-16
asked fill word	-10
asked finish material	45
asked finish word	14
asked get area	-28
asked get finish	90
asked get fixture	-12
asked get material	44
asked get part	49
asked get surface	-25
asked get tool	37
asked get work	-6
asked give fixture	-8
asked give material	68
asked give part	-25
asked give surface	-10
asked give word	-32
asked glue fixture	-20
asked glue material	18
asked glue part	-7
asked glue surface	51
asked glue word	-36
asked go area	-12
asked go finish	-23
asked go fixture	-20
asked go material	55
asked go surface	-52
asked go tool	-8
asked go word	-38
asked grab area	-16
asked grab finish	-35
asked grab fixture	-28
asked grab material	33
asked grab part	-25
asked grab surface	-2
asked grab tool	22
asked grab word	-16
asked hang area	-80
asked hang fixture	-26
asked hang material	4
asked hang part	41
asked hang surface	-13
asked hang word	-54
asked have finish	26
asked have fixture	-7
asked have part	-10
asked have surface	-28
asked have tool	26
asked have word	7
asked install word	34
asked keep material	29
asked keep word	-40
asked lay area	76
asked lay material	17
asked lay part	-59
asked lay surface	-20
asked lay word	-20
asked leave area	-45
asked leave finish	5
asked leave fixture	-40
asked leave material	27
asked leave part	-12
asked leave surface	-26
asked leave tool	-15
asked leave word	41
asked leave work	-14
asked like surface	-15
asked make material	81
asked make surface	-9
asked make word	-79
asked miss fixture	-37
asked miss material	-16
asked miss surface	-2
asked miss word	-11
asked need area	-12
asked need code	-32
asked need finish	-14
asked need fixture	-37
asked need material	-13
asked need surface	-21
asked need tool	55
asked need word	-22
asked need work	-9
asked null area	-27
asked null finish	19
asked null fixture	-9
asked null material	23
asked null part	-3
asked null surface	-14
asked null word	-11
asked null work	-32
asked open area	-18
asked order area	15
asked order finish	35
asked order fixture	60
asked order material	-34
asked order part	49
asked order surface	-31
asked order tool	40
asked order word	-24
asked order work	-13
asked pick area	-17
asked pick finish	11
asked pick fixture	26
asked pick material	22
asked pick part	58
asked pick surface	-6
asked pick tool	27
asked pick word	-52
asked pour area	-3
asked pour word	-10
asked pull material	-5
asked pull surface	-6
asked pull word	25
asked put area	-34
asked put finish	-51
asked put fixture	-63
asked put material	5
asked put part	-27
asked put surface	-8
asked put tool	-59
asked put word	-77
asked replace area	-9
asked replace material	92
asked replace word	34
asked return word	-46
asked run area	-39
asked run fixture	20
asked run material	54
asked run part	-33
asked run surface	-10
asked run word	-26
asked say area	-7
asked say fixture	52
asked say material	-21
asked say surface	-10
asked say word	-49
asked screw material	71
asked screw part	-47
asked screw surface	-7
asked screw word	-24
asked seal area	-5
asked seal word	-18
asked send fixture	63
asked send surface	36
asked send word	-31
asked set area	-19
asked set fixture	24
asked set material	-67
asked set part	38
asked set surface	6
asked set word	10
asked sister fixture	-19
asked sister material	70
asked sister surface	-6
asked sister word	-59
asked swap area	48
asked swap fixture	-75
asked swap material	41
asked swap part	86
asked swap surface	-46
asked swap word	-16
asked take area	-28
asked take finish	84
asked take fixture	-10
asked take material	-37
asked take part	-29
asked take surface	-6
asked take tool	-11
asked take word	-32
asked tell material	29
asked tell word	-14
asked think material	60
asked think word	-38
asked throw area	-14
asked throw material	33
asked throw part	-17
asked throw surface	-34
asked throw word	-3
asked use area	-33
asked use finish	97
asked use fixture	-41
asked use material	35
asked use part	-65
asked use surface	-3
asked use tool	-32
asked use word	-3
asked want area	43
asked want finish	-90
asked want fixture	-22
asked want material	-28
asked want part	8
asked want surface	15
asked want tool	-66
asked want word	-10
asked wrap material	31
back 0	47
back 1	60
back 2	9
back 3	-17
back 4	-35
back 5	-29
back 6	-36
back 7	-31
back 8	-29
before another	-17
before more	38
before new	11
before no	13
behind #	6
behind a	-8
behind about	-45
behind above	-2
behind after	25
behind ain't	-20
behind along	-48
behind an	10
behind and	20
behind another	-17
behind any	-30
behind are	-12
behind around	-14
behind at	-40
behind b	-15
behind before	-24
behind behind	-23
behind below	-60
behind between	-71
behind both	-23
behind by	-33
behind c	-4
behind can	-68
behind d	7
behind doesn't	-10
behind don't	-38
behind down	-33
behind each	-23
behind em	22
behind every	-95
behind for	9
behind from	-40
behind gotta	-5
behind has	-48
behind he's	-3
behind her	-18
behind here	-18
behind here's	-5
behind his	-41
behind i	-39
behind i'll	-65
behind i'm	-74
behind i've	-22
behind if	-15
behind in	-11
behind into	-28
behind is	-16
behind it	-17
behind it's	-32
behind its	18
behind just	-20
behind me	130
behind more	38
behind my	21
behind n	-8
behind near	-19
behind never	50
behind new	11
behind next	-29
behind no	13
behind nobody	-28
behind not	-58
behind nothing	-6
behind now	106
behind number	25
behind of	14
behind off	-18
behind old	24
behind on	-4
behind ones	-77
behind or	-18
behind out	-33
behind over	-17
behind please	48
behind quantity	-9
behind s	-14
behind she	-19
behind she's	-15
behind since	-8
behind so	-28
behind some	8
behind somebody	-54
behind than	-18
behind that	-39
behind that's	-7
behind their	9
behind them	22
behind then	-36
behind there	-6
behind there's	-41
behind they	-29
behind they're	-29
behind this	30
behind those	17
behind through	-17
behind till	-26
behind time	-7
behind to	-9
behind too	-16
behind under	-20
behind up	-25
behind us	-36
behind v buy	41
behind v have	-53
behind v measure	-42
behind v move	-35
behind v need	52
behind v other	-14
behind v return	-5
behind v see	-44
behind v use	-11
behind v work	-6
behind we	-63
behind we're	-20
behind were	-30
behind where	-6
behind which	-7
behind whole	-4
behind will	42
behind without	20
behind x	6
behind you	-11
behind your	23
by L baseboard	31
by L doors	-5
by L hardware	-7
by L lumber	26
by L paint	8
by L plumbing	-23
by L still	-22
by L undefined	9
by L wall	-30
by article again	-27
by article appliances	-103
by article bathroom	-33
by article bottom	-16
by article bottom plate	20
by article cable	-49
by article ceiling	-34
by article circuit	-6
by article closet	-15
by article closet rod	32
by article concrete	-8
by article corner	-58
by article door	33
by article door closer	102
by article doors	58
by article drywall	-12
by article edge	-58
by article electrical	-17
by article end panel	19
by article exterior	75
by article fine	-47
by article first coat	-6
by article floor	-18
by article flooring	22
by article hall	-8
by article hardware	35
by article hole	-28
by article hose	107
by article house	-5
by article hvac	8
by article kitchen	-21
by article light fixture	-83
by article line	86
by article lumber	-61
by article maybe	-18
by article one's	-17
by article outlet	5
by article p-trap	-15
by article paint	-26
by article panel	26
by article pipe	-62
by article plumbing	-15
by article right	-11
by article roofing	31
by article rough opening	-40
by article screw	-86
by article sill	-40
by article sink	-27
by article smoke detector	-55
by article solid	-31
by article still	-38
by article stud	55
by article supply line	40
by article toilet	-17
by article transition strip	55
by article tub	-75
by article undefined	-46
by article wall	-10
by article water	-13
by article what	-20
by bag again	-14
by bag already	-68
by bag appliances	58
by bag attic	-15
by bag backsplash	-6
by bag bar	-69
by bag base coat	-29
by bag baseboard	-3
by bag bathroom	-14
by bag bed	-6
by bag blocking	-4
by bag blown insulation	20
by bag board	-7
by bag bracket	-75
by bag brick	-30
by bag cable	-16
by bag carpet pad	-3
by bag ceiling	-4
by bag chimney	-4
by bag clip	4
by bag coat	-4
by bag concrete	22
by bag corner	-5
by bag deep	-11
by bag door	-9
by bag doors	-19
by bag drywall	56
by bag edge	-13
by bag electrical	5
by bag end cap	-9
by bag except	-3
by bag faucet	-2
by bag fence	-6
by bag fence post	-44
by bag first	-17
by bag floor	-11
by bag floor heating mat	-17
by bag flooring	-45
by bag front	-2
by bag garage	-4
by bag gate	-4
by bag grout	72
by bag handrail	-12
by bag hard	-19
by bag hardware	12
by bag hole	-24
by bag house	-2
by bag insulation	91
by bag joint	-2
by bag joint compound	4
by bag landscape	-25
by bag lid	-3
by bag light fixture	-13
by bag low	-8
by bag lumber	-26
by bag matte	-2
by bag maybe	-3
by bag middle	-8
by bag mortar	86
by bag mosaic	-47
by bag outlet	-9
by bag paint	-42
by bag patch	38
by bag paver	-49
by bag piece	-2
by bag pipe	-51
by bag plumbing	-73
by bag right	-9
by bag roof	-3
by bag row	-3
by bag sand	-94
by bag screw	61
by bag sealer	-4
by bag self leveler	51
by bag setting compound	23
by bag shop	-2
by bag shower pan	-6
by bag spec	-15
by bag step	-3
by bag still	-29
by bag stone veneer	-12
by bag stucco	62
by bag tape	-42
by bag thinset	64
by bag threshold	-7
by bag tight	-2
by bag tile	-4
by bag transition strip	-13
by bag truck	-3
by bag undefined	-15
by bag wall	-12
by bag water	-3
by bag what	-4
by bag wide	-6
by bag window	-8
by bag wood glue	-41
by bag yet	-7
by bottle lumber	-10
by bottle undefined	48
by box again	-3
by box already	-20
by box backsplash	-7
by box baseboard	27
by box bedroom	-3
by box board	-6
by box boards	-5
by box bolt	-8
by box bottom	-3
by box bottom plate	4
by box cabinet	38
by box cabinet screw	60
by box cable	60
by box carpet pad	-18
by box cavity	-4
by box ceiling	-12
by box clear	-44
by box closet	-10
by box company	-15
by box concrete	-25
by box corner	87
by box crown molding	-15
by box deck	-2
by box door	-19
by box door knob	-3
by box doors	42
by box drywall	-43
by box edge	-29
by box electrical	95
by box except	-6
by box fence post	-16
by box finish nail	48
by box first	39
by box first coat	-39
by box floor	-16
by box flooring	64
by box framing	-2
by box fridge	-6
by box gap	-9
by box gas supply	-2
by box glue	-4
by box grout	-44
by box hall	-4
by box handrail	-18
by box hardware	89
by box hello	-19
by box high	-7
by box hinge	-11
by box hole	-3
by box house	-4
by box hvac	-47
by box joist	-7
by box joist hanger	-3
by box kitchen	-6
by box light fixture	-6
by box line	-13
by box long	23
by box matte	-6
by box middle	-2
by box nail	73
by box oak	53
by box office	-6
by box one's	-11
by box outlet	-60
by box paint	-62
by box panel	-6
by box patio door	-15
by box plumbing	-19
by box range	-46
by box right	-4
by box riser	-5
by box roofing	13
by box screw	20
by box sealer	-18
by box shim	35
by box silicone	-2
by box sill	-4
by box slab	-6
by box soffit	-8
by box store	-23
by box stud	-24
by box subfloor	-28
by box supposed	-10
by box tape	-48
by box thinset	-38
by box threshold	-3
by box tight	-2
by box trim	49
by box truck	17
by box undefined	-29
by box upstairs	-3
by box vinyl plank	67
by box wall	-30
by box wall cabinet	91
by box water	-6
by box white	-36
by box wide	-3
by box window	-8
by box wood filler	-17
by box wood glue	-45
by box wrong	-17
by bucket appliances	-6
by bucket ceiling	-7
by bucket coat	17
by bucket concrete	-39
by bucket doors	-7
by bucket drywall	71
by bucket electrical	-9
by bucket first coat	-12
by bucket hardware	-27
by bucket hvac	-5
by bucket joint compound	106
by bucket lumber	-23
by bucket paint	-54
by bucket patch	46
by bucket plumbing	-29
by bucket screw	-17
by bucket sealer	-3
by bucket still	-4
by bucket tape	-14
by bucket tile	19
by bucket undefined	28
by bucket wall	-27
by bucket water	-11
by bundle doors	-17
by bundle hardware	-33
by bundle lumber	-33
by bundle paint	-9
by bundle roof	-22
by bundle roofing	21
by bundle undefined	23
by can ceiling	-6
by can doors	-39
by can drywall	57
by can edge	-35
by can electrical	-9
by can hardware	-16
by can hvac	-4
by can lumber	-74
by can paint	75
by can plumbing	-56
by can spray foam	36
by can undefined	-18
by can wall	-3
by carton flooring	31
by carton hardware	-17
by carton lumber	-28
by carton undefined	6
by carton vinyl plank	96
by cartridge hardware	61
by cartridge plumbing	80
by cartridge undefined	-89
by case hardware	35
by case lumber	-10
by case paint	-19
by case undefined	-60
by coat ceiling	33
by coat undefined	-32
by coil undefined	-21
by count 2x	-15
by count 2x10	24
by count 2x4	-10
by count 2x8	-68
by count abt	-3
by count accent wall	-34
by count access	-4
by count access panel	-11
by count acoustic ceiling tile	18
by count again	-26
by count air	-6
by count air filter	93
by count almond	-49
by count alone	-4
by count already	-20
by count alright	-4
by count amp draw	-15
by count angle stop	86
by count anti	-8
by count apart	-33
by count apartment	-50
by count appliances	-15
by count aside	-36
by count attic	-11
by count away	-7
by count backer board	41
by count backsplash	27
by count bags	-59
by count ball valve	-38
by count baluster	128
by count bang	-18
by count bar	84
by count base cabinet	-52
by count base unit	-12
by count baseboard	31
by count basement	-15
by count basket strainer	-26
by count bath	-5
by count bathroom	7
by count battery	38
by count beadboard	-22
by count beam	-19
by count beam wrap	-38
by count bear	-3
by count bed	-17
by count bedroom	-27
by count bedroom one	-3
by count bench	-44
by count better	-18
by count bifold	-25
by count big	-11
by count black	-50
by count black pipe	89
by count blade	81
by count blank cover	12
by count blind	108
by count blocking	22
by count blower assembly	14
by count board	52
by count boards	74
by count boiler	-20
by count bolt	17
by count bone	-5
by count bottom	-21
by count bottom plate	47
by count box room	-4
by count bracket	37
by count breaker	58
by count brick	51
by count brown	54
by count brushed nickel	-24
by count built in	-31
by count bulb	91
by count bulkhead	-3
by count bullnose	73
by count cabinet	-37
by count cabinet pull	87
by count cable	-76
by count cams	-4
by count card	-33
by count care	-5
by count carpet	-43
by count carpet pad	-19
by count carriage bolt	44
by count cartridge	-43
by count case	-11
by count casing	6
by count cat	-2
by count cat6 cable	-10
by count caulk	20
by count cavity	-15
by count ceiling	24
by count ceiling fan	-56
by count ceiling grid	-16
by count center	-8
by count centers	39
by count centre	-4
by count ceramic tile	-55
by count chain	-7
by count change order	3
by count channel	-40
by count chimney	-40
by count chunk	-2
by count church hall	-2
by count circuit	-2
by count circular saw	-19
by count clamp	9
by count clear	8
by count clearance	-3
by count cleat	-18
by count clip	-18
by count closet	-16
by count closet door	-39
by count closet flange	-21
by count closet rod	4
by count coat	-17
by count code	-2
by count cold	-12
by count collar	75
by count color	37
by count column	-20
by count concrete	18
by count concrete sealer	-92
by count condo	-2
by count conduit	-22
by count construction adhesive	-19
by count copper pipe	-61
by count corner	24
by count corner bead	110
by count count	41
by count counter	-20
by count countertop	-53
by count coupling	34
by count course	-17
by count cover plate	116
by count crawlspace	-17
by count crown molding	-19
by count curb edge	3
by count curtain rod	-11
by count cutout	49
by count damper	-19
by count data drop	-51
by count daylight	-3
by count deadbolt	-12
by count deck	-47
by count decking	-32
by count deep	-10
by count delivery	2
by count dentist	-3
by count desk	-22
by count device box	-30
by count different	-6
by count dime	-4
by count dimmer	28
by count dining room	-15
by count dishwasher	-16
by count disposal	-25
by count dobie	-12
by count dog	-20
by count door	-8
by count door closer	-23
by count door knob	39
by count door seal	86
by count door stile	-20
by count door sweep	-10
by count doorway	-8
by count double	-2
by count dowel	-14
by count downspout	35
by count downstairs	-33
by count drain	-52
by count drawer	-43
by count drawer front	66
by count drawer slide	17
by count drill bit	-15
by count driveway	-5
by count drop cloth	29
by count drum	-59
by count dryer	33
by count dryer vent	-23
by count drywall	14
by count duct	-50
by count duct boot	-37
by count due	-4
by count dumpster	-18
by count ear	-2
by count eave	-6
by count edge	-30
by count edge banding	-13
by count elbow	-34
by count electrical	6
by count else	-9
by count end cap	112
by count end panel	-35
by count enough	-29
by count entry	-3
by count epoxy	-16
by count evaporator coil	-19
by count even	-10
by count ever	-14
by count except	-40
by count exhaust fan	41
by count extension	-3
by count exterior	55
by count exterior door	-34
by count eye	-4
by count face	-14
by count face frame	-10
by count far	-33
by count fascia	-36
by count faucet	13
by count faucet stem	-19
by count fell	-10
by count fella	-2
by count felt	-31
by count felt pad	-31
by count fence	-55
by count fence post	68
by count fill valve	19
by count fine	-8
by count finger	-6
by count fire	33
by count fireplace	9
by count first	-34
by count first coat	-31
by count fitting	-87
by count flapper	-18
by count flashing	-48
by count flatbed	-63
by count flexible	-28
by count flip	-22
by count floor	4
by count floor glue	-3
by count flooring	5
by count flue	-42
by count flush mount	-3
by count foam	-5
by count foam board	-27
by count foil tape	-16
by count foot	-13
by count footing	-18
by count form	-55
by count frame	-12
by count framing	-7
by count free	-27
by count fridge	-14
by count front	43
by count full	24
by count gable	-28
by count gap	-11
by count garage	-26
by count gary	-33
by count gasket	77
by count gate	-23
by count gfci	32
by count glass	85
by count glue	-32
by count god	-8
by count gravel	88
by count gray	-87
by count great room	-14
by count green	23
by count grinder	-19
by count grout	-4
by count guard	58
by count gutter	-57
by count gutter hanger	-14
by count hair	-13
by count half bath	-3
by count halfway	-2
by count hall	-21
by count hall bath	-2
by count handrail	-17
by count hard	-12
by count hardware	17
by count hardwood	53
by count head's	-7
by count heat	-8
by count heater	-10
by count height	-9
by count hello	-10
by count here's	-5
by count herself	-2
by count high	-14
by count hinge	-37
by count hinge screw	85
by count hole	-32
by count home	-20
by count horse	-13
by count hose	-73
by count hose bib	-73
by count house	-24
by count how	-7
by count humidity	-3
by count hvac	16
by count inside corner	65
by count insp	-4
by count inspection	-2
by count insulation	-32
by count island	-37
by count itself	-11
by count j channel	37
by count jack	-20
by count jamb	-30
by count jan	-82
by count jig	-16
by count joint	-29
by count joint compound	-69
by count joist	-21
by count joist hanger	95
by count junction box	-6
by count key	83
by count kick plate	55
by count kids room	-24
by count kind	-37
by count kit	-4
by count kitchen	-23
by count kitchen faucet	-10
by count kitchenette	-15
by count knee wall	-11
by count knees	-6
by count ladder	87
by count lag bolt	-3
by count laminate	-48
by count landing	-14
by count landscape	-20
by count latch	-62
by count laundry room	-5
by count laundry sink	-2
by count leaf	-3
by count lean	-8
by count led	-23
by count led driver	10
by count ledger	-51
by count leg	-17
by count lid	26
by count light fixture	-35
by count line	-30
by count linen closet	-6
by count lint	-7
by count list	-28
by count live	-7
by count living room	-8
by count locker	-30
by count log	-17
by count long	-29
by count loop	-11
by count low	60
by count luis	-22
by count lumber	-26
by count lunch	-7
by count machine	-22
by count man	-20
by count masonry anchor	42
by count master bath	-9
by count master bedroom	-4
by count matte	-43
by count max	-27
by count maybe	-46
by count meantime	-5
by count mesh unit	-44
by count metal flex	-95
by count meter socket	-11
by count middle	-13
by count mind	-3
by count mirror	-37
by count mortar	21
by count mosaic	77
by count motor	-91
by count much	-14
by count mullion	-24
by count nail	-77
by count nail plate	114
by count nameplate	-37
by count natural	-9
by count neutral	-4
by count newel post	21
by count nice	-5
by count night	-20
by count nipple	-25
by count no hub coupling	2
by count noon	-2
by count north side	-19
by count nut	-24
by count oak	3
by count office	-15
by count offset	25
by count once	-15
by count one's	-27
by count oven	-31
by count overhang	-26
by count p-trap	17
by count paint	3
by count paint tray	-77
by count painter's tape	12
by count pallet	-37
by count panel	-23
by count pantry	25
by count paper	17
by count parapet cap	-62
by count parlor	-19
by count part	-35
by count passage	33
by count patch	-25
by count patio door	-42
by count paver	5
by count pendant	-23
by count penetrating oil	-17
by count pergola	-22
by count picket	10
by count picture	-12
by count piece	-52
by count pieces	-33
by count pine	-40
by count pipe	-30
by count pipe sleeve	-28
by count pivot	-19
by count plaster	11
by count plastic bucket	-30
by count plenty	-13
by count plumber's putty	-8
by count plumbing	4
by count plus	-30
by count pocket door	-50
by count pop up	-21
by count porch	-25
by count power cord	-92
by count primed	-36
by count primer	53
by count privacy	24
by count pump	-43
by count push	-10
by count quad outlet	69
by count rack	-24
by count radiator	-16
by count rafter	-45
by count rafter vent	80
by count rail bracket	34
by count rain	-13
by count range	-18
by count range hood	29
by count ready	-10
by count rear	-20
by count reception	-4
by count recessed light	97
by count red	-44
by count register	-3
by count regulator	102
by count replacement	-30
by count report	-4
by count restaurant	-9
by count retaining wall	-4
by count reveal	-38
by count ridge	-7
by count ridge vent	-18
by count right	-41
by count rim joist	-18
by count rings	42
by count rise	-8
by count riser	-45
by count robe hook	41
by count rock	-46
by count roller cover	-64
by count roof	-12
by count roof boot	52
by count roofing	37
by count rooftop unit	-21
by count rough	-46
by count rough opening	-42
by count round	-23
by count row	-9
by count rubber	-18
by count rubber base	45
by count runner	77
by count salon	-20
by count sand	5
by count sandpaper	14
by count sash	-34
by count sash cord	-8
by count sash lock	-7
by count satin	-17
by count scale	-2
by count sconce	-48
by count screw	30
by count screwdriver	-19
by count sealer	-34
by count seam	-11
by count second	-45
by count second fix	-8
by count second floor	46
by count self	115
by count self leveler	14
by count shd	-7
by count shed	-43
by count sheet	-12
by count sheet vinyl	-24
by count shelf	-68
by count shelf pin	83
by count shelf support	45
by count shim	-18
by count shingle	13
by count shoe molding	27
by count shop	-32
by count shower	-38
by count shower curb	-5
by count shower door	-4
by count shower pan	-29
by count shutoff valve	-35
by count siding	34
by count sign	-3
by count silicone	-13
by count sill	27
by count sink	-30
by count site	-22
by count slab	-5
by count slate	21
by count slid	27
by count sliding door track	-79
by count slope	-24
by count slow	-15
by count small	-4
by count smoke detector	9
by count soffit	-13
by count soft close	64
by count solid	-16
by count somebody's	-3
by count sorry	-14
by count spare	-34
by count splice	-18
by count sponge	78
by count spotlight	6
by count spray foam	3
by count spring	-34
by count stain	-70
by count stained	-6
by count stainless	-75
by count stair	17
by count stair nose	-37
by count stair skirt	-29
by count stair tread	26
by count step	-31
by count still	-6
by count stock	-92
by count stone veneer	15
by count store	-16
by count straight	40
by count strap tie	-13
by count street	-10
by count strike plate	55
by count string	-33
by count stringer	-5
by count strong	-3
by count stucco	-26
by count stud	-60
by count style	-10
by count subfloor	41
by count suite	-34
by count sump pump	-25
by count sunroom	-7
by count supply line	74
by count switch	20
by count tag	-14
by count takeoff	-7
by count tall	55
by count tank	-9
by count tape	-51
by count tarp	-8
by count tee	-49
by count temperature	-10
by count template	-2
by count thermostat	-17
by count thick	-10
by count thinset	102
by count third	-25
by count thirds	-13
by count threshold	16
by count tight	-8
by count tile	48
by count tile spacer	-28
by count toe kick	-44
by count together	-28
by count toggle bolt	18
by count toilet	-45
by count toilet seat	-18
by count top's	-4
by count topsoil	-38
by count towel bar	-51
by count town	-14
by count transition strip	17
by count trash pullout	4
by count treated	22
by count trench	-20
by count trim	-55
by count truck	-58
by count tub	4
by count tub spout	-31
by count tube	71
by count tubes	-13
by count turnover	-10
by count tv	-12
by count twice	-10
by count undefined	-16
by count underside	-28
by count upstairs	29
by count urinal	-59
by count vacuum	-18
by count vanity	-67
by count vanity light	-48
by count vanity top	-5
by count varnish	-45
by count vent	-65
by count vent pipe	-36
by count vinyl plank	8
by count wainscot	-4
by count wall	-6
by count wall cabinet	-65
by count wall plug	-29
by count wallpaper	115
by count washer	31
by count washer box	-5
by count water	-13
by count water heater	-2
by count water pressure	-15
by count wax	-33
by count wax ring	-22
by count weatherstrip	6
by count weight	-5
by count what	-20
by count what's	-13
by count whip	32
by count white	-48
by count whoever	-3
by count wide	-23
by count wind	-14
by count window	37
by count window bench	-8
by count window screen	45
by count wire mesh	8
by count wood filler	-28
by count wood glue	-97
by count wrong	-30
by count xfmr	-2
by count yard	-18
by count yet	-16
by count you'd	-7
by count zone	-13
by each already	-41
by each appliances	-24
by each backsplash	-38
by each baseboard	66
by each concrete	52
by each corner	92
by each deck	41
by each door	-17
by each door knob	-70
by each doors	-73
by each drywall	4
by each edge	9
by each electrical	-30
by each exterior	-4
by each floor	-4
by each flooring	60
by each hall	-7
by each handrail	-46
by each hardware	-19
by each hole	-16
by each hvac	-71
by each kitchen	-6
by each lumber	-32
by each maybe	-46
by each paint	-37
by each panel	-4
by each plumbing	-14
by each right	-9
by each roofing	18
by each screw	84
by each sealer	-7
by each still	-16
by each stock	102
by each tape	-5
by each tile	108
by each truck	-16
by each undefined	-14
by each wall	-40
by each window	-11
by ft access panel	-7
by ft appliances	-30
by ft baseboard	42
by ft bathroom	-63
by ft bedroom	-6
by ft bottom	-16
by ft cable	-19
by ft casing	-33
by ft caulk	-16
by ft ceiling fan	-8
by ft clamp	-27
by ft closet	-4
by ft concrete	-13
by ft corner	-10
by ft door	-26
by ft doors	25
by ft drywall	45
by ft duct	78
by ft duct boot	36
by ft edge	-18
by ft electrical	14
by ft exhaust fan	-10
by ft floor	-7
by ft flooring	-37
by ft front	-41
by ft gap	-7
by ft glue	-8
by ft hall	-12
by ft hardware	33
by ft house	-13
by ft hvac	3
by ft line	-30
by ft living room	-8
by ft lumber	-54
by ft maybe	-43
by ft nail	-20
by ft office	-21
by ft outlet	-11
by ft paint	-17
by ft panel	-48
by ft patch	-2
by ft pipe	-44
by ft plumbing	39
by ft plywood	-8
by ft power cord	101
by ft right	-51
by ft roof	-6
by ft roofing	74
by ft sash cord	102
by ft shoe molding	73
by ft slab	-3
by ft soffit	-50
by ft spray foam	-14
by ft still	62
by ft undefined	-32
by ft wall	-7
by ft water	-3
by ft weatherstrip	136
by ft wide	-13
by ft window	-28
by gal again	-19
by gal already	-14
by gal appliances	-3
by gal bleach	-7
by gal board	-30
by gal cabinet pull	-9
by gal caulk	-25
by gal ceiling	97
by gal ceiling fan	-4
by gal coat	-8
by gal concrete	-14
by gal dining room	-11
by gal door	-10
by gal doors	-33
by gal drywall	-8
by gal edge	-8
by gal eggshell	61
by gal electrical	-20
by gal first	-6
by gal first coat	46
by gal floor	-13
by gal flooring	-42
by gal glue	-4
by gal gray	62
by gal hall	-5
by gal hardware	-26
by gal hole	-18
by gal house	-26
by gal hvac	-7
by gal kids room	75
by gal landscape	-25
by gal living room	-9
by gal lumber	21
by gal matte	-36
by gal maybe	75
by gal office	-54
by gal paint	39
by gal plumbing	-6
by gal primer	8
by gal ready	-10
by gal right	-3
by gal roofing	-27
by gal sand	-11
by gal satin	5
by gal second	-24
by gal stain	39
by gal stain blocker	-33
by gal still	-7
by gal tape	-22
by gal tile	-33
by gal trim	40
by gal varnish	85
by gal wall	-9
by gal walnut	21
by gal white	19
by gal wood glue	38
by jug undefined	-45
by kg electrical	-25
by kg hardware	-39
by kg undefined	62
by kit doors	-70
by kit epoxy	103
by kit hardware	8
by kit lumber	-2
by kit undefined	-59
by lb drywall	-46
by lb electrical	-7
by lb hardware	68
by lb lumber	-43
by lb plumbing	-7
by lb screw	57
by lb undefined	-20
by length baseboard	70
by length casing	-9
by length concrete	-8
by length doors	-16
by length electrical	-77
by length hardware	-124
by length lumber	42
by length plumbing	103
by length undefined	-9
by length wall	-3
by m baseboard	59
by m door	-21
by m doors	4
by m edge	-6
by m electrical	93
by m flooring	-18
by m hvac	-21
by m living room	-3
by m paint	-47
by m plumbing	-66
by m round	-60
by m still	29
by m undefined	-24
by m wall	-12
by pack appliances	-11
by pack doors	-20
by pack drywall	18
by pack electrical	57
by pack floor	-7
by pack grout	-43
by pack hardware	27
by pack hole	-3
by pack lumber	-39
by pack matte	-13
by pack oak	12
by pack outlet	-33
by pack paint	-34
by pack plumbing	-30
by pack screw	-3
by pack stair	-40
by pack tile	-18
by pack undefined	-25
by pack varnish	-27
by pack wall	-23
by pail drywall	48
by pail flooring	20
by pail hardware	10
by pail paint	12
by pail undefined	-13
by pair appliances	-3
by pair door	-27
by pair doors	62
by pair drawer	-13
by pair drawer slide	85
by pair edge	-7
by pair electrical	-67
by pair hardware	97
by pair lumber	3
by pair paint	-6
by pair plumbing	-6
by pair undefined	-122
by pallet concrete	64
by pallet undefined	-59
by pointer door	8
by pointer doors	-44
by pointer drywall	-11
by pointer electrical	16
by pointer hardware	35
by pointer hole	-13
by pointer hvac	-76
by pointer lumber	6
by pointer paint	8
by pointer plumbing	37
by pointer tile	-23
by pointer undefined	-42
by pointer wall	-20
by pt doors	-14
by pt lumber	-10
by pt undefined	9
by qt baluster	-7
by qt closet	-3
by qt color	-7
by qt concrete	-17
by qt door	-28
by qt doors	-55
by qt edge	-7
by qt electrical	-22
by qt first	-4
by qt first coat	-3
by qt handrail	-8
by qt hardware	-43
by qt hole	-7
by qt hvac	-11
by qt lumber	-78
by qt maybe	8
by qt paint	64
by qt patch	-12
by qt plumbing	25
by qt primed	75
by qt primer	64
by qt roofing	-8
by qt sand	-47
by qt stain	13
by qt stain blocker	31
by qt tile	-30
by qt trim	-26
by qt undefined	-22
by qt wall	-17
by qt window	-43
by roll access panel	-31
by roll again	-7
by roll already	-16
by roll appliances	-13
by roll black	15
by roll blocking	-10
by roll board	-24
by roll boards	-5
by roll carpet pad	-39
by roll caulk	-56
by roll ceiling	-4
by roll ceiling fan	-5
by roll closet	-8
by roll concrete	-39
by roll corner	-54
by roll doors	-24
by roll drop cloth	-19
by roll drywall	4
by roll duct	-9
by roll edge	-3
by roll elbow	-2
by roll electrical	-14
by roll flashing tape	101
by roll floor	-13
by roll floor glue	-63
by roll flooring	-81
by roll hardware	16
by roll hole	-3
by roll house	-9
by roll hvac	-25
by roll joint	-22
by roll joint compound	-16
by roll joist	-50
by roll kitchen	-12
by roll landscape	-32
by roll lumber	-30
by roll matte	-21
by roll maybe	-38
by roll one's	-3
by roll outlet	-5
by roll paint	8
by roll painter's tape	52
by roll panel	-13
by roll plumbing	-23
by roll plywood	-14
by roll primer	-31
by roll right	-3
by roll roof	-5
by roll roofing	72
by roll screw	-27
by roll seam	61
by roll siding	-14
by roll slope	-4
by roll still	-7
by roll subfloor	-7
by roll tape	21
by roll tile	-15
by roll truck	-12
by roll undefined	-11
by roll wall	36
by roll wallpaper	91
by roll weatherstrip	75
by roll white	-5
by roll wide	-28
by roll window	-3
by roll wire mesh	74
by roll wood glue	-53
by row undefined	71
by set electrical	14
by set hardware	5
by set plumbing	-12
by set undefined	-20
by sheet backer board	50
by sheet board	53
by sheet ceiling	-18
by sheet concrete	-89
by sheet data drop	-7
by sheet doors	-44
by sheet drywall	91
by sheet edge	-10
by sheet electrical	-25
by sheet first	-3
by sheet floor	-12
by sheet flooring	-18
by sheet framing	-3
by sheet garage	-7
by sheet glass	-6
by sheet glue	-5
by sheet hardware	-50
by sheet hole	-3
by sheet hvac	-4
by sheet joint	-9
by sheet joist	-5
by sheet lid	-21
by sheet lumber	-18
by sheet maybe	-23
by sheet moisture board	13
by sheet mosaic	92
by sheet paint	36
by sheet patch	-10
by sheet piece	-12
by sheet pipe	-3
by sheet plumbing	-26
by sheet plywood	60
by sheet right	-3
by sheet roof	-3
by sheet roofing	-36
by sheet screw	-74
by sheet still	-4
by sheet subfloor	-34
by sheet tape	-42
by sheet tile	65
by sheet tub	-22
by sheet undefined	-21
by sheet wall	-20
by sheet window	-37
by sleeve lumber	-19
by sleeve paint	-54
by sleeve undefined	-76
by spool electrical	54
by spool undefined	-40
by sq ft lumber	-45
by sq ft tile	80
by sq ft undefined	42
by sq m undefined	-66
by square undefined	-97
by stick baseboard	45
by stick crown molding	58
by stick doors	-7
by stick drywall	-6
by stick edge	-12
by stick electrical	12
by stick glue	-12
by stick hardware	26
by stick hvac	-4
by stick lumber	85
by stick paint	-59
by stick plumbing	-33
by stick undefined	-44
by stick wall	-7
by tin lumber	-97
by tin paint	36
by tin undefined	57
by ton undefined	-42
by tub doors	45
by tub electrical	-26
by tub hardware	-7
by tub lumber	-31
by tub plumbing	32
by tub undefined	-18
by tube 2x	-2
by tube again	-11
by tube appliances	-7
by tube baseboard	-74
by tube black	60
by tube bottom	-3
by tube bracket	-2
by tube cabinet pull	-6
by tube casing	-66
by tube caulk	76
by tube concrete	-88
by tube construction adhesive	80
by tube corner	-4
by tube crown molding	-38
by tube cutout	-3
by tube door	-3
by tube doors	-13
by tube drain	-2
by tube drywall	-16
by tube edge	-5
by tube electrical	-26
by tube epoxy	22
by tube exterior	-39
by tube fine	-6
by tube fire caulk	98
by tube floor	-3
by tube flooring	-53
by tube fridge	-9
by tube gap	-12
by tube glue	-5
by tube grout	-7
by tube hardware	25
by tube hole	-6
by tube hvac	-7
by tube joint	-22
by tube joist	-4
by tube landscape	-8
by tube light fixture	-28
by tube line	-41
by tube lumber	-76
by tube p-trap	-2
by tube paint	9
by tube panel	-5
by tube plumbing	-31
by tube plywood	-4
by tube roofing	2
by tube screw	-15
by tube sealer	-8
by tube silicone	95
by tube sill	-6
by tube slab	-12
by tube spray foam	-24
by tube stair tread	-5
by tube still	-48
by tube stud	-9
by tube tape	-2
by tube tight	-2
by tube tile	-29
by tube truck	-2
by tube tub	-89
by tube wall	-3
by tube window	-11
by tube wood glue	131
by yd concrete	33
by yd lumber	-102
by yd undefined	-26
capital false	-3
capital true	-32
counted	-20
counted area	-20
counted finish	28
counted fixture	29
counted material	-20
counted part	-24
counted surface	-9
counted tool	28
counted word	15
cut longer	-5
cut longer article	3
cut longer bare	18
cut longer count	-16
cut longer named false ends defect	57
cut longer named false ends material	18
cut longer named false ends number	-38
cut longer named false ends part	37
cut longer named false ends verb	68
cut longer named false ends word	-5
cut longer named true ends area	10
cut longer named true ends defect	-45
cut longer named true ends finish	106
cut longer named true ends fixture	-50
cut longer named true ends material	29
cut longer named true ends number	-16
cut longer named true ends role	30
cut longer named true ends surface	-39
cut longer named true ends tool	-53
cut longer named true ends verb	-25
cut longer named true ends word	-4
cut longer pack	-7
cut longer size 1	54
cut longer size 3	11
cut longer size 4	-15
cut longer size 5	-23
cut longer size 6	-6
cut longer size 7	-24
cut longer volume	-28
cut longer weight	-48
cut new	-7
cut new area	29
cut new article	37
cut new length	17
cut new named false ends area	-29
cut new named false ends defect	15
cut new named false ends finish	14
cut new named false ends fixture	90
cut new named false ends material	89
cut new named false ends number	-39
cut new named false ends part	19
cut new named false ends role	53
cut new named false ends surface	-36
cut new named false ends verb	-27
cut new named false ends word	-37
cut new pack	-35
cut new pointer	8
cut new size 2	11
cut new size 3	-5
cut new size 4	-8
cut new size 5	-72
cut new size 6	-40
cut new size 7	-19
cut new volume	-71
cut new weight	8
cut same	20
cut same area	-22
cut same article	3
cut same bare	8
cut same count	11
cut same length	4
cut same named false ends area	-69
cut same named false ends finish	-22
cut same named false ends material	41
cut same named false ends number	-60
cut same named false ends part	-2
cut same named false ends role	52
cut same named false ends verb	14
cut same named false ends word	-74
cut same named true ends area	-30
cut same named true ends defect	-45
cut same named true ends finish	51
cut same named true ends fixture	-8
cut same named true ends material	34
cut same named true ends number	-84
cut same named true ends part	42
cut same named true ends role	-91
cut same named true ends surface	-21
cut same named true ends tool	48
cut same named true ends verb	23
cut same named true ends word	3
cut same pack	34
cut same pointer	82
cut same size 1	17
cut same size 2	29
cut same size 3	7
cut same size 4	73
cut same size 5	77
cut same size 6	-55
cut same volume	76
cut same weight	47
cut shorter	-10
cut shorter article	-58
cut shorter bare	-30
cut shorter length	24
cut shorter named false ends area	-9
cut shorter named false ends finish	-44
cut shorter named false ends word	-42
cut shorter named true ends area	-46
cut shorter named true ends defect	-36
cut shorter named true ends finish	-27
cut shorter named true ends fixture	10
cut shorter named true ends material	35
cut shorter named true ends number	-46
cut shorter named true ends part	42
cut shorter named true ends role	-17
cut shorter named true ends surface	44
cut shorter named true ends tool	14
cut shorter named true ends verb	-33
cut shorter named true ends word	-39
cut shorter pack	17
cut shorter pointer	-42
cut shorter size 1	-14
cut shorter size 2	22
cut shorter size 3	-9
cut shorter size 4	11
cut shorter volume	-23
cut shorter weight	40
did buy imperative	-24
did buy modal	-8
did buy past	44
did buy present	-9
did have imperative	-8
did have owed	-21
did have past	-11
did measure imperative	28
did measure modal	17
did measure owed	-84
did measure past	18
did measure present	-19
did move imperative	-65
did move modal	40
did move owed	-33
did move past	-10
did move present	-13
did need modal	-31
did need owed	15
did need present	-62
did null imperative	83
did null modal	-16
did null none	-3
did null owed	-30
did null present	15
did other copula	-5
did other imperative	14
did other modal	-19
did other owed	16
did other past	4
did other present	9
did return past	-7
did return present	67
did say imperative	-43
did say modal	14
did say owed	-14
did say past	-61
did say present	-29
did see imperative	6
did see modal	5
did see owed	-3
did see past	-34
did see present	-32
did use imperative	-9
did use modal	3
did use past	12
did use present	-5
did work imperative	-7
did work modal	22
did work owed	-13
did work past	-12
did work present	-7
done	7
done area	42
done article	-49
done count	-5
done length	-49
done pack	20
done pointer	-8
done volume	34
done weight	-13
ends area	-40
ends area next #	-3
ends area next finish	-32
ends area next fixture	-13
ends area next mark	13
ends area next material	-12
ends area next part	-6
ends area next surface	-6
ends area next verb	-19
ends area next word	-24
ends defect	-29
ends defect next mark	-13
ends defect next material	-4
ends defect next verb	32
ends defect next word	-39
ends finish	7
ends finish next #	24
ends finish next Q count	-40
ends finish next Q length	-15
ends finish next Q null	67
ends finish next finish	-38
ends finish next mark	9
ends finish next material	-5
ends finish next number	-14
ends finish next part	3
ends finish next surface	-3
ends finish next verb	19
ends finish next word	6
ends fixture	8
ends fixture next defect	43
ends fixture next fixture	-15
ends fixture next mark	-61
ends fixture next material	-31
ends fixture next part	-31
ends fixture next verb	61
ends fixture next word	19
ends joined	35
ends material	41
ends material next #	49
ends material next Q count	33
ends material next Q length	-15
ends material next Q null	8
ends material next Q pack	39
ends material next area	79
ends material next break	89
ends material next defect	-8
ends material next finish	-22
ends material next mark	39
ends material next material	22
ends material next number	34
ends material next part	-3
ends material next surface	40
ends material next time	51
ends material next tool	-14
ends material next verb	28
ends material next word	43
ends number	-61
ends number next #	-27
ends number next mark	-82
ends number next material	-16
ends number next part	-11
ends number next verb	-31
ends number next word	-51
ends part	40
ends part next #	19
ends part next Q count	13
ends part next Q current	41
ends part next Q length	58
ends part next Q null	20
ends part next area	-85
ends part next defect	21
ends part next finish	30
ends part next fixture	29
ends part next mark	77
ends part next material	-32
ends part next number	88
ends part next part	-33
ends part next surface	55
ends part next time	13
ends part next verb	-5
ends part next word	30
ends plural article	-8
ends plural bare	47
ends plural count	66
ends plural length	-13
ends plural pack	22
ends plural pointer	10
ends plural volume	7
ends plural weight	41
ends role next verb	-29
ends role next word	30
ends surface	-8
ends surface next Q length	15
ends surface next Q null	20
ends surface next defect	55
ends surface next mark	-65
ends surface next material	-8
ends surface next part	-12
ends surface next surface	-25
ends surface next verb	36
ends surface next word	-16
ends tool	11
ends tool next #	7
ends tool next mark	-25
ends tool next part	-8
ends tool next verb	17
ends tool next word	21
ends verb	-16
ends verb next #	12
ends verb next Q length	-57
ends verb next Q null	-9
ends verb next Q pack	-3
ends verb next break	-8
ends verb next finish	-17
ends verb next mark	-21
ends verb next material	-23
ends verb next number	-19
ends verb next part	-16
ends verb next surface	4
ends verb next time	4
ends verb next verb	36
ends verb next word	-17
ends word	-24
ends word 2x4	24
ends word adhesive	50
ends word almond	15
ends word anchor	59
ends word anchors	64
ends word angle	56
ends word arm	56
ends word around	-17
ends word arrived	-44
ends word back	-56
ends word bag	-19
ends word bags	-127
ends word ball valve	24
ends word bar	80
ends word base	58
ends word bath	31
ends word battery	33
ends word batts	62
ends word belt	-22
ends word bit	-87
ends word black	24
ends word blade	76
ends word blanks	11
ends word blinds	49
ends word block	-22
ends word blocks	53
ends word blue	-7
ends word blue tape	56
ends word board	39
ends word boards	14
ends word bolt	73
ends word bolts	55
ends word bonding primer	16
ends word box	-67
ends word boxes	-65
ends word bracket	78
ends word brackets	31
ends word brads	60
ends word brass	-77
ends word breaker	35
ends word brick	77
ends word bring	-33
ends word broken	-19
ends word brown	-17
ends word brushes	47
ends word bulb	12
ends word bulbs	81
ends word bullnose	27
ends word bumpers	23
ends word cab	-21
ends word cabinet screws	34
ends word cable	-52
ends word cap	36
ends word carriage bolts	33
ends word case	-64
ends word casing	26
ends word cat6	-84
ends word caulk	68
ends word ceiling	-29
ends word ceiling white	60
ends word cement	120
ends word center	-2
ends word changed	-34
ends word charcoal	23
ends word chrome	-3
ends word clamps	96
ends word cleats	-6
ends word clip	25
ends word clips	48
ends word closer	19
ends word coated	-14
ends word coffee	125
ends word color	-56
ends word coming	-30
ends word concrete	3
ends word construction adhesive	11
ends word contact	53
ends word copper	55
ends word cord	51
ends word corner	25
ends word corner bead	-21
ends word couplings	-35
ends word cover	139
ends word covers	108
ends word cracked	-42
ends word crown	25
ends word cut	-110
ends word damper	5
ends word dead	-8
ends word deck screws	39
ends word deep	-38
ends word delivered	-39
ends word discs	96
ends word done	-20
ends word door	-31
ends word doors	-53
ends word double	-56
ends word dowel	29
ends word drain	-92
ends word drywall	-87
ends word drywall screws	17
ends word eggshell	67
ends word eight	-15
ends word elbow	-19
ends word elbows	71
ends word em	-22
ends word enamel	11
ends word end	-6
ends word end cap	64
ends word end caps	-12
ends word enough	-41
ends word epoxy	30
ends word extender	85
ends word extenders	118
ends word extension	49
ends word exterior	-12
ends word extra	-19
ends word fan	-76
ends word faucet	24
ends word felt	5
ends word filler	34
ends word filter	53
ends word filters	27
ends word finish	12
ends word fire	-29
ends word first	-56
ends word fitted	-45
ends word fixed	-12
ends word flashing	-116
ends word flashing tape	30
ends word flat	-68
ends word flex	-26
ends word flexible	3
ends word foam	7
ends word foil	35
ends word foil tape	34
ends word frame	59
ends word fridge	-48
ends word front	-20
ends word full	-45
ends word gasket	34
ends word glass	26
ends word glue	55
ends word glued	-32
ends word go	-51
ends word gone	-41
ends word good	-59
ends word got	-25
ends word grab	28
ends word gray	67
ends word green	-23
ends word grey	10
ends word grout	-21
ends word guy	-35
ends word half	-29
ends word hall	-55
ends word hand	-34
ends word hangers	50
ends word head	72
ends word heads	143
ends word heavy	-70
ends word hex	61
ends word hinge	-39
ends word hinges	65
ends word hood	-12
ends word hook	3
ends word hooks	36
ends word hose	11
ends word hung	-55
ends word inch	-13
ends word joint	15
ends word joist hangers	81
ends word joists	-26
ends word just	10
ends word keep	-10
ends word keys	55
ends word kind	-7
ends word kit	106
ends word kitchen	-56
ends word knobs	21
ends word ladder	24
ends word lags	65
ends word laid	-28
ends word lamp	79
ends word last	-27
ends word lead	89
ends word leaning	-23
ends word leave	-69
ends word left	-53
ends word left hand	-26
ends word level	12
ends word lever	15
ends word lid	12
ends word lightweight	47
ends word lock	38
ends word long	-95
ends word longer	-43
ends word loose	-57
ends word low	-44
ends word maple	-22
ends word mastic	119
ends word matching	-23
ends word maybe	-8
ends word mesh	75
ends word mesh tape	15
ends word mine	-39
ends word missing	-34
ends word mix	126
ends word more	-57
ends word mortar	68
ends word mud	10
ends word nails	11
ends word new	-46
ends word next	-46
ends word next #	-53
ends word next Q count	40
ends word next Q length	78
ends word next Q null	-53
ends word next Q pack	-45
ends word next Q volume	-27
ends word next area	-18
ends word next break	-85
ends word next defect	-6
ends word next finish	-10
ends word next fixture	-25
ends word next mark	-12
ends word next material	-16
ends word next number	-35
ends word next part	-22
ends word next surface	-50
ends word next time	-3
ends word next tool	-18
ends word next verb	-22
ends word next word	-11
ends word nos	-84
ends word number	-39
ends word oak	-49
ends word oil	-6
ends word old	-33
ends word one	-42
ends word one of them	-4
ends word ones	-96
ends word only	-34
ends word or	21
ends word order	-44
ends word ordered	-49
ends word osb	52
ends word outlet	-78
ends word outlets	-63
ends word p	-7
ends word paint	-77
ends word panel	-14
ends word panels	-62
ends word paper	71
ends word paste	9
ends word patch	21
ends word pickets	21
ends word piece	-16
ends word pieces	-13
ends word pins	50
ends word pipe	-24
ends word pl	66
ends word plain	-11
ends word planks	38
ends word plastic	27
ends word plate	130
ends word plates	87
ends word plenty	-46
ends word plugs	66
ends word plus	-61
ends word ply	29
ends word poly	29
ends word post	18
ends word posts	-6
ends word primed	57
ends word primer	33
ends word pull	-55
ends word pulls	53
ends word pump	29
ends word put	-36
ends word putty	46
ends word pvc	92
ends word r	-16
ends word rapid set	9
ends word red	32
ends word reducer	47
ends word remain	-18
ends word replaced	-40
ends word ring	168
ends word rod	56
ends word rods	47
ends word roll	-59
ends word roller	64
ends word round	-69
ends word rubber	-4
ends word run	-58
ends word running	-19
ends word s	-63
ends word same	-64
ends word sand	-63
ends word sash cord	14
ends word satin	-11
ends word says	-65
ends word screen	-17
ends word screw	117
ends word screwed	-22
ends word screws	91
ends word seal	13
ends word sealant	41
ends word sealer	17
ends word second	-51
ends word self leveler	28
ends word semi gloss	48
ends word set	4
ends word sheets	39
ends word shelf	41
ends word shelf pins	52
ends word shellac	-2
ends word shelves	-82
ends word shims	34
ends word short	-64
ends word shy	-25
ends word side	-44
ends word silicone	80
ends word single gang	-84
ends word site	-42
ends word sitting	-43
ends word slip	-59
ends word small	-8
ends word sockets	-11
ends word spacer	-54
ends word spare	-58
ends word square	-67
ends word ss	-36
ends word stacked	-27
ends word stain	3
ends word stain blocker	41
ends word stainless	2
ends word stay	-82
ends word still	-46
ends word stock	-28
ends word stone	57
ends word stops	137
ends word straps	71
ends word strip	-66
ends word structural screws	83
ends word studs	-17
ends word stuff	-52
ends word style	50
ends word swapped	-37
ends word sweep	39
ends word swiss	-32
ends word switch	-39
ends word switches	43
ends word tall	-16
ends word tape	34
ends word taped	3
ends word tee	7
ends word tell	-16
ends word the lady	-42
ends word thick	-8
ends word thinset	57
ends word third	-24
ends word through	-25
ends word tile	23
ends word tiles	64
ends word time	-43
ends word toggle	61
ends word toggles	43
ends word top	-30
ends word total	-42
ends word trap	49
ends word treads	61
ends word treated	100
ends word trim	-80
ends word truck	-43
ends word tub	-71
ends word tubes	84
ends word two	-6
ends word two by eight	-8
ends word two by four	-69
ends word two by six	-65
ends word unopened	-62
ends word used	-60
ends word van	-61
ends word varnish	17
ends word vent	-26
ends word vinyl	32
ends word wall	46
ends word walnut	-4
ends word wanted	-59
ends word wants	-77
ends word washer	-28
ends word washers	54
ends word water	24
ends word wax ring	34
ends word wedges	8
ends word what's	31
ends word white	-36
ends word wht	-10
ends word wide	-94
ends word window	8
ends word wire	17
ends word wire nuts	40
ends word wood	-77
ends word wood filler	13
ends word wood glue	29
ends word work	-29
ends word wrong	-24
flawed false	34
flawed true	6
fuller	10
fuller area material	-68
fuller area part	-44
fuller article 1	-80
fuller back 0	4
fuller back 1	62
fuller back 2	16
fuller back 3	13
fuller back 4	-44
fuller bare 1	-57
fuller by 1 to 1	7
fuller by 1 to 2	-18
fuller by 1 to 3	-26
fuller by 2 to 1	24
fuller count 1	13
fuller count 2	45
fuller fixture word	49
fuller head finish	79
fuller head fixture	-30
fuller head material	17
fuller head part	-116
fuller head surface	-28
fuller head word	118
fuller material material	84
fuller part part	-51
fuller surface material	25
fuller word finish	79
fuller word material	-65
fuller word part	-91
fuller word word	53
goods false	-30
goods false false	-38
goods false true	-22
goods true	17
goods true false	39
goods true true	-3
head 16d	-31
head 18/2	-88
head 1x4	-65
head 1x8	-9
head 2x	-15
head 2x10	9
head 2x2	-73
head 2x4	-22
head 2x6	-100
head 2x8	-71
head 4x6	-88
head abs pipe	9
head absent	93
head abt	-4
head accent wall	10
head access	-21
head access panel	19
head acoustic ceiling tile	11
head acrylic	56
head actuator	113
head addition	-9
head afci breaker	66
head afternoon	-18
head again	-25
head air	-8
head air filter	59
head almond	-54
head alone	-7
head already	-41
head alright	-14
head aluminum	-11
head amp draw	-16
head anchor bolt	57
head angle stop	80
head anti	-8
head anti tip bracket	88
head anybody	-11
head anyone	-6
head apart	-31
head apartment	-55
head area	-5
head arm	-14
head aside	-29
head attic	-13
head attic stair	50
head auto filler	-96
head away	-12
head awl	26
head back bedroom	-8
head backer board	100
head backer rod	-54
head backsplash	18
head bags	-58
head ball	-9
head ball valve	-48
head ballast	-55
head baluster	42
head banana	-9
head band	56
head bang	-24
head bank	-6
head bar	-7
head barn	-32
head base cabinet	-16
head base coat	-62
head base unit	-14
head baseboard	66
head basement	-17
head basement bath	-3
head basket strainer	11
head batch	-57
head bath	-11
head bathroom	-31
head battery	45
head bay	-21
head beadboard	34
head beam	11
head beam wrap	-44
head bear	-3
head bearing's	35
head bed	-19
head bedroom	-22
head bedroom one	53
head bench	-48
head bendy	54
head better	-43
head bifold	-39
head big	-18
head birch ply	13
head bite	-5
head black	-40
head black pipe	88
head blade	47
head blank cover	7
head bleach	-27
head bled	-18
head blind	91
head blk	-3
head blocking	5
head bloke	-6
head blower assembly	62
head blown insulation	15
head blue	57
head board	46
head board's	34
head boards	86
head body	51
head boiler	-27
head bolt	10
head bond	-7
head bonding	-43
head bone	-31
head bookcase	-27
head bother	-2
head bottom	-23
head bottom plate	53
head bottom's	-50
head bout	59
head bowl	-4
head box extender	-13
head box room	-9
head boys	-21
head bracket	13
head brake	-15
head bread	-13
head breaker	63
head breast	-13
head brennans	-4
head brick	29
head brine tank	-60
head brkr	-3
head bronze	52
head brother	-7
head brown	18
head brushed nickel	-86
head btm	-3
head buff	-23
head bugger	-8
head built in	-38
head bulb	65
head bulkhead	-6
head bullnose	84
head burner	-10
head button	60
head cab	-3
head cabinet	2
head cabinet catch	-29
head cabinet pull	24
head cabinet screw	-13
head cable	29
head cabs	-10
head cam	-10
head camera	-9
head cams	-4
head capstone	82
head card	-36
head care	-9
head carpet	-9
head carpet pad	-29
head carpet tile	6
head carriage bolt	38
head carton	35
head cartridge	23
head case	-11
head casing	-19
head cast iron pipe	-14
head cat	-9
head cat6 cable	-11
head catch basin	69
head caulk	10
head cavity	-14
head cedar	50
head ceiling	31
head ceiling fan	-45
head ceiling grid	-19
head ceiling paint	-11
head cement	-68
head center	-9
head centers	33
head centre	-7
head centres	-29
head ceramic tile	-53
head chain	14
head chair rail	-28
head chalk	-5
head channel	43
head chase	-10
head check valve	32
head chiller	-18
head chimney	-53
head chunk	-3
head church	-9
head church hall	-2
head chutes	78
head circuit	-20
head circular saw	36
head clamp	-19
head cleanout	-23
head clear	-85
head clearance	-3
head cleat	36
head click	3
head clip	-5
head closet	-29
head closet bolt	6
head closet door	-48
head closet flange	-63
head closet kit	-64
head closet rod	8
head coat	-19
head cock	10
head code	-5
head coffee	48
head coil stock	24
head cold	-19
head collar	73
head color	-15
head color's	-2
head column	-30
head company	-18
head composite	100
head concrete	8
head concrete sealer	89
head condensate line	-16
head condo	-36
head conduit	-41
head confirmat	3
head construction adhesive	23
head contact	78
head contractor	-7
head contractor bag	-9
head cooktop	-51
head copper pipe	-37
head corner	17
head corner bead	116
head corner board	54
head couch	-2
head count	50
head counter	-31
head counter area	-25
head counters	-8
head countertop	-21
head coupling	-18
head course	-19
head cousin	-3
head cover plate	85
head crawlspace	-32
head crazy	-11
head credit	-48
head crown molding	22
head ctr	-10
head curb edge	-17
head curbing	-70
head curtain rod	-10
head cutout	12
head dale	-7
head damper	-53
head dark	-62
head dark gray	-4
head data drop	-108
head date	-14
head dave	-5
head daylight	-46
head deadbolt	-13
head dealer	-31
head deck	66
head deck screw	82
head decking	-38
head deep	-28
head dehu	-27
head delivery	-5
head demolition	-20
head den room	-6
head dense	-5
head dentist	-4
head dentist's	-13
head desk	-31
head device box	-42
head diamond lath	-31
head different	-12
head dime	-8
head dimmer	35
head dining room	-17
head disconnect	-21
head discs	7
head dishwasher	-24
head dishwasher hose	-4
head disinfectant	-15
head disposal	16
head ditra	101
head dobie	-16
head dog	-47
head door	-26
head door buck	-21
head door closer	30
head door glide	-61
head door knob	-3
head door seal	46
head door stile	-38
head door stop	43
head door sweep	62
head door viewer	10
head doorbell	-61
head doorway	-34
head dormer	-13
head double	-19
head double hung	-10
head dowel	-19
head downspout	65
head downspout elbow	103
head downstairs	-33
head draft	-71
head drain	-45
head drain tile	-47
head drawer	-48
head drawer front	53
head drawer slide	47
head drawing	-16
head dresser	-4
head drill	-20
head drill bit	-57
head drip edge	-13
head drip line	-13
head driveway	-28
head drop cloth	6
head drum	-48
head dryer	-30
head dryer vent	-48
head drywall	-3
head duane	-6
head duct	70
head duct boot	2
head due	-10
head dump truck	-48
head dumpster	-50
head ear	-4
head earliest	-20
head east	-17
head eave	-25
head edge	-29
head edge banding	84
head edge trim	-16
head eggshell	35
head egress window	-18
head elastomeric coating	18
head elbow	-10
head electric	-2
head electrical	-5
head elevator	-2
head else	-25
head em's	-47
head enamel	27
head end cap	-15
head end panel	-11
head enough	31
head entry	-28
head epoxy	53
head escutcheon	65
head evaporator coil	-26
head even	-32
head ever	-25
head everywhere	-56
head exam	-5
head exam room	-19
head except	-50
head exhaust fan	19
head expansion	88
head expansion tank	47
head extension	-6
head exterior	63
head exterior door	-39
head extra	-17
head eye	-5
head face	-52
head face frame	-20
head factory	-10
head fan box	17
head far	-29
head fascia	-30
head fast set	17
head fat	-25
head faucet	8
head faucet stem	-105
head fault	-9
head fell	-10
head fella	-27
head fellas	-4
head felt	-17
head felt pad	5
head fence	-59
head fence post	-8
head fiber tape	-4
head field	-2
head fifth	-4
head fill valve	16
head filler strip	97
head fine	-29
head finger	-8
head fingernail	-22
head finish nail	-15
head fire	27
head fire caulk	67
head fire rated drywall	-5
head fireblocking	-14
head firewall	-7
head first	-9
head first coat	-18
head fitting	-86
head five eighths board	-11
head flagstone	108
head flap	-31
head flapper	15
head flashing	24
head flashing tape	22
head flatbed	-65
head flexible	83
head flip	-22
head float switch	57
head flood test	-16
head floor	-15
head floor drain	65
head floor glue	22
head floor heating mat	-43
head floor paint	55
head flue	-86
head flush mount	-3
head foam	52
head foam board	-27
head foil	-12
head foil tape	46
head foot	-49
head footing	37
head forever	-4
head form	-54
head fourth	-16
head frame	-13
head framing	-19
head free	-28
head fresh	-43
head fridge	-28
head front	-10
head front counter	-6
head front's	-9
head furnace	-24
head furniture	-4
head furring strip	-27
head gable	-28
head galvanized	-7
head gap	-25
head garage	-25
head garage door	49
head gary	-33
head gary's	-13
head gas joint	-4
head gas supply	15
head gasket	35
head gate	-69
head genius	-3
head gfci	24
head girls	-6
head glass	-3
head globe	82
head gloss	-16
head glue	-23
head god	-28
head gpg	-10
head grain	-6
head grand	-5
head gravel	60
head gray	60
head grease trap	-15
head great room	-19
head green	-50
head grille	-16
head grinder	-26
head grout	-3
head guard	79
head guest bath	-2
head guest room	-7
head guide	95
head gun	-22
head gutter	-20
head gutter guard	114
head gutter hanger	-12
head hair	-22
head half bath	-4
head halfway	34
head hall	-20
head hall bath	-4
head hammer	63
head hand truck	-4
head handrail	-39
head happy	-3
head hard	-46
head hardness	-11
head hardware	-108
head hardwood	-6
head head's	-7
head heat	-23
head heater	-11
head height	-17
head height's	-11
head hell	-2
head hello	-25
head hendersons	-6
head here's	-31
head herringbone	-55
head herself	-3
head hex key	-5
head hide	-14
head high	-16
head hinge	-28
head hinge screw	82
head hip	-3
head hole	-30
head home	-38
head horse	-13
head hose bib	-5
head hot	-7
head house	-38
head house wrap	-12
head how	-14
head humidity	-11
head hurricane tie	90
head hvac	-12
head ice and water shield	15
head inch	22
head inside corner	60
head insp	-6
head inspection	-16
head insulated	-40
head insulation	5
head inventory	-7
head iron	-46
head island	-42
head itself	-13
head j channel	49
head jack	-23
head jack stud	-9
head jamb	-53
head jan	-80
head jess	-11
head jig	-18
head joint	-33
head joint compound	-14
head joist	-31
head joist hanger	60
head junction box	-6
head kayla	-12
head keg	-3
head kens	-10
head key	75
head kick plate	47
head kids room	28
head kind	-51
head kit	8
head kitchen	-26
head kitchen faucet	58
head kitchenette	-29
head knee wall	-16
head knees	-7
head ladder	42
head lag bolt	-29
head laminate	67
head landing	-15
head latch	-21
head latex	40
head laundry room	-30
head laundry sink	-3
head lazy susan	-15
head lead	-3
head leaf	-3
head lean	-13
head least	-15
head led	-22
head led driver	95
head ledger	-58
head left hand	-50
head leftover	18
head leg	-33
head lena	-3
head length	-31
head lens	89
head less	-17
head lever connector	-24
head lid	11
head lift	-22
head light fixture	-69
head lime	-61
head line	-5
head line set cover	126
head linen	-4
head linen closet	-6
head liner	-18
head lineset	-18
head linkage	-8
head lint	-21
head lintel	-66
head list	-28
head listen	-23
head lite	48
head live	-12
head living room	-40
head load	-11
head lobby	-8
head lock	24
head locker	-82
head log	-17
head long	-37
head longer	-5
head loop	-10
head lord	-7
head low	33
head luis	-36
head lumber	-77
head lunch	-14
head lvl	-16
head machine	-39
head magnet	-4
head mailbox	-41
head man	-31
head maple	-8
head marble tile	-39
head marco	-54
head marker	28
head masonry anchor	31
head master bath	-16
head master bedroom	-10
head mat	53
head matte	-37
head max	-25
head maximum	-8
head maybe	-64
head mdf	-87
head meantime	-36
head medicine cabinet	-3
head melamine	-50
head mesh tape	-8
head mesh unit	-6
head metal	-3
head metal flex	32
head meter socket	-40
head microwave	-14
head middle	-20
head mill	-36
head mind	-9
head mini split	-6
head mira	-5
head mirror	30
head moisture board	-6
head moisture meter	-24
head mop sink	-6
head mortar	39
head mosaic	89
head motion	-11
head motor	-120
head mouse	-13
head much	-20
head mullion	-32
head myself	-30
head nail	-43
head nail hole	-11
head nail plate	48
head nailer	-53
head name	-22
head nameplate	-37
head natural	21
head neutral	-9
head new addition	-3
head newel post	-12
head news	-12
head nice	-25
head niche	-15
head night	-25
head ninth	-4
head nipple	-26
head nitrogen	-18
head nobody's	-14
head noon	-18
head north	-27
head north side	-17
head north wall	-11
head nose	-9
head note	-19
head nowhere	-14
head numbers	57
head nut	-26
head oak	63
head oatmeal	-3
head odd	-5
head office	-43
head offset	25
head oil primer	46
head old work box	12
head once	-29
head one's	-25
head orange	-34
head osb	37
head ours	-27
head outlet	-21
head oven	-39
head overflow	34
head overhang	-24
head overnight	-9
head p-trap	-22
head paddock	-9
head paint	-14
head paint brush	-14
head paint sprayer	-59
head paint tray	-31
head painter's tape	37
head pair	-15
head pallet	-92
head panel	-4
head paper	26
head paper tape	-39
head paper's	-20
head parapet cap	-70
head parlor	-19
head parquet	-17
head part	-38
head party wall	-8
head passage	17
head patch	25
head patio	-10
head patio door	-67
head paver	29
head pendant	-30
head penetration	-4
head perforated	-28
head pergola	-25
head perimeter	-7
head permit	-4
head pete's	-18
head pex	51
head photo	-3
head photos	-4
head piano hinge	48
head picket	69
head picture	-12
head pictures	-38
head piece	-39
head pieces	-32
head pile	-24
head pine	35
head pine board	10
head pins	-12
head pipe	-51
head pipe sleeve	8
head pivot	51
head planer	-5
head plaster	-50
head plaster washer	62
head plastic bucket	-96
head plate compactor	-11
head plenty	-15
head plumber's putty	-5
head plus	-41
head plywood	31
head pocket	-2
head pocket door	58
head pool	-11
head pop up	-46
head poplar	76
head porcelain tile	-61
head porch	-42
head porridge	-4
head post base	-19
head post cap	-2
head prehung door	-20
head prep	14
head pressure test	-5
head price	-3
head primary	-3
head primed	6
head primer	37
head print	-18
head privacy	13
head prob	-8
head profile	6
head pruitt	-2
head pump	-57
head purple	126
head push	-10
head putty knife	-7
head pvc pipe	67
head quad outlet	67
head quart	-4
head quiet	-67
head quikrete	19
head rabbet	-3
head rack	-23
head rad	-52
head radiator	-59
head rafter	-13
head rafter vent	55
head rags	-27
head rail bracket	23
head rain	-42
head rake	-40
head ramp	-15
head range	-56
head range hood	-25
head range hood vent	-21
head rather	-6
head ray	-11
head reach	26
head ready	-50
head rear	-23
head reception	-6
head recessed light	58
head recirculation pump	-40
head red	-26
head regulator	97
head remains	-5
head remnant	36
head remodel	-2
head remote	-5
head rental	-15
head repair kit	-11
head replacement	-32
head report	-8
head reroof	-69
head respirator	48
head restaurant	-14
head retaining wall	-6
head return's	-2
head reveal	-37
head rick	-2
head ridge	-9
head ridge vent	17
head right	-34
head right hand	-22
head rim joist	-57
head ring	-3
head rings	31
head rise	-8
head riser	-57
head robe hook	44
head rock	-60
head roller cover	-101
head romex	31
head roof	-6
head roof boot	49
head roof drain	-49
head rooftop unit	-34
head rope	70
head rough	8
head rough opening	-48
head round	-47
head router	-12
head row	-37
head rubber	135
head rubber base	105
head rubber mat	-73
head rung	-15
head runner	73
head safe	-9
head salon	-20
head sand	-62
head sandpaper	63
head sash	-75
head sash cord	75
head sash lock	-46
head satin	21
head satin etched	-18
head scale	-2
head school	-9
head sconce	-47
head scrap	-32
head scratch coat	-24
head screed	-3
head screed board	-11
head screw	11
head screwdriver	-21
head seal's	-4
head sealant	-21
head sealer	-5
head seam	6
head second fix	-8
head second floor	3
head section	-12
head self	131
head self leveler	73
head semigloss	-58
head sensor	67
head setting compound	-9
head shd	-11
head shed	-49
head sheet	-25
head sheet vinyl	-14
head sheets	57
head shelf	-73
head shelf bracket	51
head shelf pin	96
head shelf support	-9
head shim	-2
head shingle	5
head shoe molding	-11
head shook	-9
head shop	-41
head should've	-4
head shoulder	-3
head shower	-55
head shower curb	-6
head shower door	57
head shower floor	-4
head shower head	-61
head shower pan	-37
head shower valve	-11
head shower wall	-8
head shutoff valve	32
head shutter	-40
head sideways	-12
head siding	-10
head sign	-11
head signal	-47
head silicone	36
head sill	-17
head sill pan	-55
head sill plate	-5
head silver	6
head single	-6
head singles	-6
head sink	-53
head sink base	-6
head sink clip	94
head sink cutout	-4
head sir	-13
head site	-27
head skirt board	-12
head slab	-17
head slat wall	21
head slate	-43
head sleeve anchor	79
head slid	24
head sliding door track	-83
head slip	-47
head sliver	-15
head slope	-18
head slot	-14
head slow	-15
head small	-20
head smoke detector	-16
head snow guard	41
head sock	45
head sofa	-4
head soffit	-98
head soft close	113
head solid	-27
head somebody's	-6
head somethin	-4
head somewhere	-7
head sooner	-7
head sorry	-14
head south	-18
head south wall	-6
head spackle	-23
head spare	-35
head speaker	-3
head speaker wire	116
head spec	-13
head spins	-23
head splash block	46
head splice	-17
head spline	35
head sponge	47
head spotlight	4
head spray foam	11
head spring	-3
head spring hinge	45
head sprinkler head	-32
head spun	-24
head stain	-15
head stain blocker	23
head stained	-8
head stainless	-13
head stair	-4
head stair nose	-20
head stair skirt	-55
head stair tread	-4
head stairwell	-11
head staple	-96
head starter clip	4
head static	-9
head steel	-20
head steel column	-19
head step	-26
head step flashing	12
head still	-14
head stock	99
head stock room	-31
head stone veneer	6
head store	-46
head storefront	-20
head storm	-37
head storm door	33
head story	-11
head straight	29
head strap tie	-24
head street	-19
head strike plate	14
head string	-30
head stringer	-12
head strong	-7
head structural screw	-27
head stub	-8
head stucco	-3
head stud	-28
head studio	-5
head style	-10
head subfloor	-70
head subway tile	79
head suite	-33
head sump pump	-44
head sun	-10
head sun's	-47
head sunroom	-9
head supply line	77
head supposed	-31
head sure	-3
head sweet	-6
head switch	-9
head tack cloth	10
head tack strip	58
head tae	-9
head tag	-30
head tailpiece	-43
head takeoff	-10
head tall	41
head tank	-77
head tapcon	-7
head tape	-57
head tarp	-19
head tea	-3
head tee	-50
head temperature	-19
head tempered	-7
head template	-6
head terry	-3
head thermostat	-5
head thick	-54
head thinset	66
head third	-38
head thirds	-51
head thumb	-6
head tight	-12
head tile	20
head tile spacer	-29
head tilt	-5
head tint	-28
head tip	61
head toe	-4
head together	-57
head toggle bolt	-16
head toilet	-55
head toilet seat	-12
head tongue	-2
head top plate	-5
head top's	-26
head topping compound	54
head topsoil	-43
head touch up	-32
head towel bar	15
head town	-36
head tpr	-5
head transition strip	15
head trash	-22
head trash pullout	-52
head traveler	-6
head treated	8
head tree	-39
head trench	-23
head trey	-30
head trim	-8
head trouble	-8
head truck	-46
head trunk	28
head trunk's	-4
head truss	-15
head tub	-39
head tub drain	54
head tub spout	-91
head tub surround	-5
head tube	120
head tubes	48
head turnover	-10
head tv	-12
head twice	-17
head two's	-11
head type	-44
head uncoupling membrane	19
head under cabinet light	-16
head underlayment	-14
head underside	-25
head upper	-6
head upstairs	12
head upstairs hall	-13
head urinal	-59
head utility knife	12
head vacuum	-21
head valley	70
head vanity	-25
head vanity light	-93
head vanity top	22
head vapor barrier	165
head varnish	45
head veneer	-78
head vent	-76
head vent hood	-21
head vent pipe	-47
head vinyl plank	19
head visit	-7
head vlv	-42
head voice	-15
head wainscot	-67
head waiting area	-20
head walkway	-7
head wall	-15
head wall cabinet	16
head wall plug	-29
head wallpaper	114
head wallpaper paste	-37
head walnut	61
head washer	-10
head washer box	63
head water	-19
head water heater	-36
head water pressure	8
head waterproofing	-8
head wax	-63
head wax ring	-25
head weak	-26
head weather	83
head weatherstrip	153
head wedge	60
head weight	-16
head weld	-10
head west wall	71
head wet room	-15
head what	-42
head what's	-54
head whatever	-3
head wheel	44
head whip	15
head white	-26
head white paint	20
head whoever	-8
head whoever's	-2
head why	-35
head wide	-43
head wind	-25
head window	-26
head window ac	-53
head window bench	-44
head window screen	36
head window well	-19
head winter	-5
head wire mesh	20
head wire nut	42
head wonder	-20
head wood filler	53
head wood glue	-30
head wood lath	-19
head wool	78
head worth	-26
head write	-3
head wrong	-44
head xfmr	-2
head yard	-54
head yellow	-66
head yet	-20
head you'd	-15
head zone	-15
in Q count	-66
in Q length	8
in Q null	5
in Q volume	-38
in defect	19
in finish	44
in fixture	-10
in material	-10
in number	-5
in part	-14
in role	-58
in surface	31
in tool	-35
in verb	21
in word	21
kind area	-24
kind area area	-72
kind area article	2
kind area count	-24
kind area length	-32
kind area pack	-28
kind area pointer	21
kind area volume	7
kind area weight	-15
kind code	36
kind code count	48
kind code pack	-8
kind defect	-14
kind defect count	-8
kind defect pack	-9
kind finish	35
kind finish article	-52
kind finish count	6
kind finish length	40
kind finish pack	46
kind finish pointer	19
kind finish volume	75
kind finish weight	79
kind fixture	-20
kind fixture article	5
kind fixture count	-19
kind fixture length	-26
kind fixture pack	-19
kind fixture pointer	-3
kind fixture volume	-40
kind fixture weight	-4
kind material	19
kind material area	94
kind material article	-5
kind material count	13
kind material length	38
kind material pack	22
kind material pointer	41
kind material volume	4
kind material weight	18
kind part area	-74
kind part article	26
kind part count	17
kind part pack	-28
kind part pointer	-18
kind part volume	-41
kind part weight	-47
kind surface	-17
kind surface area	-63
kind surface article	-43
kind surface count	-10
kind surface length	-45
kind surface pack	-24
kind surface pointer	26
kind surface volume	4
kind surface weight	-48
kind tool	11
kind tool area	-31
kind tool article	48
kind tool count	45
kind tool length	-35
kind tool pack	-15
kind tool pointer	-18
kind tool volume	-53
kind tool weight	-10
kind word	-11
kind word area	28
kind word article	-29
kind word count	-12
kind word pack	-3
kind word pointer	-96
kind word volume	-37
kind word weight	-38
kind work	-16
kind work count	-13
kind work pack	-18
label	15
lead 	7
lead a	5
lead a article	5
lead a new	-19
lead an	-14
lead an article	-14
lead em count	-122
lead extra	63
lead extra count	51
lead more	-16
lead more count	-16
lead more of the	20
lead more the	-139
lead new	-27
lead new article	-60
lead new count	21
lead of	56
lead of area	41
lead of count	-21
lead of em	-122
lead of it	-16
lead of length	35
lead of pack	62
lead of that	-17
lead of the	72
lead of them	20
lead of those	29
lead of volume	42
lead of weight	32
lead of x	10
lead one	70
lead one article	-83
lead one of them	-43
lead one of them pointer	-43
lead one of those	55
lead one of those pointer	55
lead one pointer	70
lead some	2
lead spare	49
lead spare count	49
lead that pack	94
lead the	-113
lead the article	56
lead the count	-24
lead the length	5
lead the pack	-36
lead the volume	34
lead them count	16
lead those count	29
lead undefined area	-17
lead undefined count	10
lead undefined length	5
lead undefined pack	-8
lead undefined volume	44
lead undefined weight	4
lead x	24
lead x count	41
lead x pack	-5
like told 1	-17
like told 2	-60
like told 3	-8
meant article false	-12
meant count false	4
meant count true	-24
meant false false	-3
meant false true	33
meant pointer false	-6
meant pointer true	-52
meant true true	-25
modified	33
more area	-14
more finish	73
more fixture	-16
more material	42
more part	30
more surface	-34
more tool	-4
more word	13
never told false	6
never told true	-24
next #	26
next &	-67
next (	24
next )	28
next +	22
next ,	6
next -	-10
next .	12
next ;	45
next @	6
next Q count	33
next Q current	15
next Q length	36
next Q null	6
next Q pack	19
next Q volume	-20
next Q weight	51
next a	33
next all	-99
next already	-21
next and	32
next are	45
next area	-5
next around	44
next arrived	22
next as	-28
next at	28
next back	36
next because	62
next before	94
next behind	-109
next board	-45
next box	-26
next boxes	-21
next break	-9
next but	45
next by	-47
next came	-9
next cause	-5
next coffee	-32
next come	90
next coming	20
next cover	-53
next cut	87
next defect	28
next don't	10
next down	-31
next each	-18
next em	-9
next enough	-15
next extra	49
next finish	-42
next fitted	43
next fixture	-40
next for	57
next from	54
next get	12
next glued	-9
next go	77
next goes	-40
next gone	55
next good	8
next got	40
next guy	-21
next had	-19
next has	-45
next have	27
next he	-22
next here	-14
next hung	50
next i'll	48
next i'm	43
next i've	58
next if	40
next in	8
next inch	-8
next instead	117
next is	26
next it	-26
next it's	-75
next keep	-5
next kind	-10
next kit	-52
next leave	43
next left	117
next lid	-76
next like	-96
next mark	9
next material	-22
next mine	82
next need	-20
next needed	62
next never	-7
next new	18
next next	110
next no	-32
next not	26
next now	26
next number	2
next of	-78
next off	-2
next oh	77
next on	26
next ones	-42
next or	59
next ordered	40
next out	27
next over	-59
next part	-48
next piece	35
next pieces	34
next please	65
next plus	52
next replaced	40
next ring	-46
next role	18
next roll	-33
next round	45
next run	6
next running	42
next same	22
next says	-79
next seal	-56
next set	61
next she	11
next short	49
next sitting	-4
next so	15
next spare	41
next still	36
next stock	8
next strip	-30
next stuff	99
next surface	-22
next swapped	48
next tell	51
next that	40
next that's	32
next the	-16
next them	-6
next then	-14
next there	6
next there's	-4
next they	26
next they're	6
next through	36
next time	55
next to	19
next too	27
next tool	-3
next tubes	13
next under	51
next up	-26
next used	76
next verb	15
next wanted	-56
next wants	-31
next was	-78
next we	65
next went	68
next were	41
next when	22
next which	17
next while	32
next will	62
next with	-85
next word	13
next work	22
not sold so	-45
of -	-8
of about	-45
of above	-2
of after	25
of along	-48
of around	-14
of at	-40
of before	-24
of behind	-23
of below	-60
of between	-71
of by	-33
of down	-33
of for	9
of from	-40
of in	-11
of into	-28
of near	-19
of next	-29
of of	14
of off	-18
of on	-4
of out	-33
of over	-17
of through	-17
of to	-9
of under	-20
of up	-25
of without	20
opens area	-34
opens defect	111
opens finish	10
opens fixture	47
opens material	26
opens number	-26
opens part	42
opens role	20
opens surface	-10
opens tool	57
opens verb	-27
opens word	-18
opens word adhesive	28
opens word almond	45
opens word angle	81
opens word back	-88
opens word base	60
opens word battery	15
opens word batts	16
opens word belt	9
opens word black	54
opens word blocks	25
opens word blue	14
opens word blue tape	21
opens word board	-25
opens word boards	-31
opens word bolt	45
opens word bolts	44
opens word bonding primer	11
opens word bracket	9
opens word brackets	3
opens word brads	22
opens word brass	37
opens word brick	64
opens word bulbs	17
opens word cabinet screws	29
opens word cable	-85
opens word cap	25
opens word carriage bolts	32
opens word casing	18
opens word ceiling white	28
opens word cement	49
opens word charcoal	-38
opens word chrome	49
opens word clamps	68
opens word clear	100
opens word clip	16
opens word clips	30
opens word color	-47
opens word color match	46
opens word concrete	9
opens word construction adhesive	9
opens word copper	32
opens word couplings	-36
opens word covers	115
opens word crown	26
opens word deck screws	13
opens word deep	-5
opens word door	15
opens word doors	-84
opens word double	-79
opens word dowel	10
opens word drain	8
opens word drywall screws	7
opens word eggshell	76
opens word elbow	13
opens word elbows	51
opens word end	10
opens word end cap	62
opens word end caps	-21
opens word epoxy	13
opens word extension	33
opens word exterior	46
opens word extra	12
opens word fan	-3
opens word felt	8
opens word filler	11
opens word filter	44
opens word filters	40
opens word finish	-25
opens word fire	29
opens word flashing tape	30
opens word flat	-52
opens word flex	-60
opens word foam	-9
opens word foil tape	31
opens word frame	75
opens word fridge	14
opens word full	-29
opens word gasket	6
opens word glass	15
opens word glue	18
opens word gone	-32
opens word good	-95
opens word gray	40
opens word green	60
opens word grout	44
opens word hangers	42
opens word heavy	-41
opens word hinge	-68
opens word hinges	50
opens word hung	-31
opens word joint	-43
opens word joist hangers	70
opens word kitchen	45
opens word knobs	18
opens word lags	62
opens word lamp	73
opens word last	-55
opens word left	-67
opens word lightweight	47
opens word long	6
opens word longer	7
opens word low	22
opens word maple	-32
opens word mastic	8
opens word mesh	27
opens word mesh tape	15
opens word mix	88
opens word more	-79
opens word mud	17
opens word nails	11
opens word new	-83
opens word nos	-84
opens word oak	34
opens word oil	30
opens word one	-30
opens word ordered	-43
opens word osb	45
opens word outlets	-70
opens word panel	18
opens word panels	-50
opens word paper	32
opens word pins	41
opens word pipe	-39
opens word pl	57
opens word planks	15
opens word plastic	8
opens word plus	-38
opens word ply	12
opens word poly	-9
opens word posts	-30
opens word primer	25
opens word pull	-29
opens word pulls	45
opens word pump	18
opens word putty	11
opens word pvc	26
opens word rapid set	9
opens word red	-78
opens word reducer	28
opens word rubber	66
opens word same	-165
opens word sand	17
opens word satin	-71
opens word screw	68
opens word screws	29
opens word sealant	12
opens word sealer	12
opens word self leveler	15
opens word semi gloss	30
opens word shellac	28
opens word shelves	-77
opens word shims	35
opens word silicone	20
opens word spacer	33
opens word spare	-42
opens word stain	3
opens word stainless	64
opens word still	-76
opens word stone	13
opens word straps	17
opens word structural screws	24
opens word studs	-13
opens word tape	18
opens word thinset	45
opens word third	-99
opens word tile	44
opens word tiles	20
opens word toggles	42
opens word total	-69
opens word trap	34
opens word treads	48
opens word treated	18
opens word trim	54
opens word tub	-26
opens word unopened	-58
opens word used	-73
opens word vinyl	40
opens word wall	80
opens word walnut	15
opens word washer	5
opens word washers	42
opens word wax ring	25
opens word white	-56
opens word wide	-90
opens word window	14
opens word wire nuts	23
opens word wood	10
opens word wood filler	12
opens word wood glue	23
other room	-18
over clause	9
over clause defect	-23
over clause finish	-31
over clause fixture	15
over clause material	-25
over clause number	-11
over clause part	-21
over clause role	-27
over clause surface	-52
over clause tool	28
over clause verb	29
over clause word	36
own	14
own article false	-61
own by size	214
own count false	-10
own count true	24
own goods 0	-20
own goods 1	25
own goods 2	40
own goods 3	4
own pointer false	8
own pointer true	52
own pointing false false	-14
own pointing false true	21
own pointing true false	-39
own pointing true true	-62
own size 1	6
own size 2	17
own size 3	7
own size 5	-18
own size 6	-23
own size 7	-27
own unit area	-17
own unit article	-18
own unit count	6
own unit length	13
own unit pack	27
own unit pointer	34
own unit volume	34
own unit weight	40
place -	-15
place here	47
place rest	-19
place subject	-2
plural false area true	-8
plural false article -	-26
plural false count false	-12
plural false count true	-31
plural false length false	13
plural false length true	14
plural false pack -	5
plural false pack false	-20
plural false pack true	-19
plural false pointer -	-56
plural false volume false	-14
plural false weight false	-56
plural false weight true	-2
plural true area true	24
plural true article -	4
plural true count false	-16
plural true count true	43
plural true length false	-23
plural true length true	-38
plural true pack -	14
plural true pack false	-2
plural true pack true	-2
plural true pointer -	35
plural true volume false	-43
plural true volume true	-3
plural true weight false	30
plural true weight true	-26
pointing false	-14
pointing true	27
ran out	108
rank 0	47
rank 0 article	49
rank 0 count	46
rank 0 pointer	58
rank 1	16
rank 1 article	25
rank 1 count	14
rank 1 pointer	34
rank 2	-5
rank 2 article	18
rank 2 count	-7
rank 3	-19
rank 3 article	-5
rank 3 count	-19
rank 3 pointer	-30
rank 4	-28
rank 4 article	-35
rank 4 count	-27
rank 4 pointer	-43
rank 5	-27
rank 5 article	-29
rank 5 count	-25
rank 5 pointer	-35
rank 6	-42
rank 6 article	-121
rank 6 count	-36
rank 6 pointer	-131
said copula	-4
said imperative	-4
said modal	5
said none	-3
said owed	-5
said past	-8
said present	-8
same unit	20
sentences 0	32
sentences 1	-46
sentences 2	-41
sentences 3	-42
shares	-15
sized	-11
sold so	104
the	-5
to clause end	7
told 1	12
told 1 area	-31
told 1 article	-20
told 1 count	43
told 1 length	-12
told 1 pack	-16
told 1 pointer	-64
told 1 weight	-59
told 2	-36
told 2 article	-122
told 2 count	-50
told 2 length	-39
told 2 pack	2
told 2 pointer	-47
told 2 volume	-21
told 2 weight	-9
told 3	-37
told 3 article	-35
told 3 count	-49
told 3 length	-27
told 3 pack	-12
told 3 volume	-12
told before	4
told bought left	16
told bought left false 1	27
told bought left true 1	3
told bought null	-52
told bought null false 1	-28
told bought other	-78
told bought other false 1	-43
told bought wants	28
told bought wants false 1	59
told bought wants false 2	-25
told bought wants true 1	13
told bought work	5
told by false	-7
told by true	6
told have have	-96
told have have false 1	-54
told have left	26
told have left false 1	16
told have left true 1	28
told have move	-10
told have move false 1	-51
told have need	26
told have need true 1	30
told have null	-35
told have null false 1	-8
told have null false 2	-55
told have null false 3	-14
told have null true 1	-34
told have null true 2	-13
told have other	29
told have other false 1	-46
told have other true 1	92
told have other true 2	-30
told have use	18
told have use false 1	-16
told have wants	69
told have wants false 1	61
told have wants false 2	-39
told have wants false 3	-22
told have wants true 1	90
told have wants true 2	38
told have wants true 3	-43
told have work	22
told have work false 1	4
told have work true 1	43
told here	-33
told need have	-26
told need have false 1	-5
told need have false 2	-6
told need have true 1	-9
told need left	26
told need left false 1	11
told need left false 2	-41
told need left true 1	6
told need left true 2	59
told need move	-48
told need move false 1	-23
told need null	-74
told need null false 1	-57
told need null false 2	-35
told need null false 3	-10
told need null true 1	-93
told need null true 2	-22
told need other	-29
told need other false 1	-28
told need other false 2	-26
told need other true 1	33
told need other true 2	-46
told need say	-42
told need say false 1	-41
told need use	-9
told need use false 1	31
told need use false 2	-6
told need use true 1	-52
told need wants	-61
told need wants false 1	-45
told need wants false 2	-15
told need wants true 1	-110
told need wants true 2	-20
told need work	-61
told need work false 1	-56
told need work false 2	-10
told need work false 3	-3
told need work true 1	-37
told need work true 2	-15
told returned left	71
told returned null	83
told returned null false 1	-23
told returned other	32
told returned other false 1	47
told returned wants	68
told returned wants true 1	79
told used buy	-55
told used buy false 1	-16
told used have	4
told used have false 1	49
told used have false 2	-39
told used have true 1	-12
told used left	104
told used left false 1	107
told used left false 2	-50
told used left false 3	-20
told used left true 1	99
told used left true 2	26
told used left true 3	38
told used move	-17
told used move false 1	-28
told used move false 2	-3
told used move true 1	8
told used need	-19
told used null	-22
told used null false 2	-33
told used null false 3	-24
told used null true 1	-21
told used null true 2	-22
told used null true 3	-15
told used other	-10
told used other false 1	20
told used other false 2	-30
told used other false 3	-11
told used other true 1	-20
told used other true 2	-14
told used other true 3	-3
told used say	-44
told used say false 1	-44
told used use	-18
told used use false 1	3
told used use false 2	-13
told used use true 1	-30
told used use true 2	-4
told used wants	2
told used wants false 1	42
told used wants false 2	-32
told used wants false 3	-22
told used wants true 1	-4
told used wants true 2	-17
told used wants true 3	-30
told used work	-73
told used work false 1	-40
told used work false 2	-36
told used work true 1	-62
told used work true 2	-15
touches false	63
touches true	4
use buy	3
use use	7
within &	72
within and	-64
within in	-67
within of	90
within out	47
within over	-18
within the	-62
within under	-32
within up	-79
words 1	-28
words 2	18
words 3	13
words 4	5
`;
