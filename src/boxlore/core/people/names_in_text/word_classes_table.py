"""Common English words by what they are: WordNet 3.0; made by make_word_classes.py beside the tests."""

THINGS = frozenset(
    """
    abandonment abasement abdomen aberration ability abjection ablation abnormality abolition abortion abreaction
    abridgment abruptness abscess abscissa absence absenteeism absorbency absorption abstention abstraction
    abstruseness absurdity abundance abyss academy acceleration accelerator accenting acceptance access accessory
    accident accompaniment accordance account accounting accouterment accreditation accretion acculturation
    accumulation accuracy accusation acetone acetonemia achievement acid acidity acquiescence acquisition acre acreage
    acres acrobatics actinometer action activism activity actuality adaptation addition additive adenoma adequacy
    adherence adhesive adieu adios adjective adjournment adjudication adjunct adjustment admiration admission
    admonition adolescence adoption adroitness adulation adulthood advantage advent adventure adverb adversity
    advertisement advertising advice advisability advocacy aegis aeration aerator aerosol affair affairs affection
    affidavit affiliation affinity affirmation affluence afghan aftereffect afternoon agate age agency agenda
    agglomeration agglutination agglutinin aggregation aggression agitation agony agreement agriculture ague ailment
    aimlessness air aircraft airflow airframe airplane airport airs airspeed airway aisle alabaster album albumin
    alchemy alcohol alerting alertness algae alibi alienation alignment aliquot alkali allegation allegiance allegory
    alley alleyway alligator allocation allotment allowance allusion aloes aloneness aloofness alpha alteration
    altercation alternative altitude altruism aluminum alundum alveolus amazement ambiance ambiguity ambition
    ambulance ambuscade amendment aminomethane amity ammo ammoniac ammunition amp amphibology amplification amplifier
    amplitude amulet amusement anachronism anaconda anaesthesia analogue analogy analysis analyticity analyzer
    anaplasmosis anarchy anastomosis anatomy ancestry andrena anecdote anemia anger angst anguish animal animosity
    anion anionic ankle annihilation anniversary announcement annoyance anode anomie anonymity anorexia ant antagonism
    anteater antelope antenna anthill anthropology antibody anticipation antigen antipathy antiquity antiserum
    antithesis anvil anxiety aorta apartment ape aperture aplomb apogee apologia apology apparatus appearance appendix
    appetite applause apple applejack applicability application applicator appointment appraisal appreciation
    apprehension appropriation approval approximation apron aptitude arc architecture archives ardor areaway arena
    argon argot argument aridity aristocracy arithmetic arm armadillo armament armchair armful armoire armor armpit
    arms army aroma arousal arrangement arrogance arrow arroyo arsenic art arteriole artery arthritis article
    articulation artifact artifice artillery artistry arts ascendancy ash aspect asphalt aspiration aspirin assemblage
    assembly assertion assertiveness assessment asset assiduity assigning assignment assimilation assistance
    association assortment assumption assurance asterisk astonishment astronomy astrophysics asymmetry asynchrony
    athleticism athletics atm atmosphere atom atrophy attachment attainment attendance attention attire attitude
    attraction audacity audience auditorium austerity authenticity authorities authorization authorship auto
    autoloader automation automobile autonomy autopsy autumn availability avarice avenue aversion aviary aviation
    avocado avoidance awakening awarding awareness awfulness axe axiom axis axle azimuth babel backbend backbone
    backdrop background backing backlog backstage backyard bacon bacteria badge badness baffled bag baggage bagpipe
    bale balkiness ball ballad ballast ballet balloon ballot ballpark ballroom ballyhoo balsam balustrade banana band
    bandage bandoleer bandstand bandwidth banister banjo bank bankruptcy banner banquet barbell barbital barbiturate
    bargaining barium barley barn barnful barnyard barony baroreceptor barrack barrage barrel barrier baseball
    baseline basement bash basin basis basket basketball bass bassinet bastion batch bath bathing bathos bathrobe
    bathroom bathtub baton battalion battery battle batwing bawdyhouse bayonet bazaar beach beacon bead beak bean
    bearing beating beauty bedpost bedroom bedstead bedtime bee beebread beech beef beehive beer beetle beggary behalf
    behavior being belching belfry belief bell belly benediction bequest bereavement berg berry berth beryllium
    bestowal betrayal betterment beverage bevy bewilderment bias bible bibliography biceps bickering bicycle bile
    bilharziasis bill bin binder binding binoculars bioassay biography biology biomedicine biopsy bird birdbath
    birdhouse birefringence birth birthday birthright biscuit bishopry bitterness bitters bivouac blackberry
    blackboard blackening blackness blackout blandness blanket blaring blasphemy blatancy bleachers bleb blemish
    blending blessing blindness blinker blizzard blob bloc blockade blood bloodhound bloodshed bloodstream blot blotch
    blower blowfish blowing bludgeon bluefish blues bluff boarding boardinghouse boat boater boating boatload bodice
    body bodybuilding bogy boiler boldness bolo bombast bomber bombing bombproof bond bone bonemeal bonfire bonnet
    bonus book bookcase booking bookshelf boot booth booty booze borate boredom borrowing bosom bottle bottleneck
    bottomland boucle bough boulder boulevard bouncing bounds bouquet bourgeoisie bout bower bowl bowlder bowstring
    box boxcar boyhood bracing braggadocio brain brake brakes bramble branch brand brandy brass bravado bravery
    brazenness bread breadth breakable breakaway breakdown breakthrough breakup breakwater breast breastwork breath
    breathing breeches breeze brevity bricklaying bridle briefcase briefing brier brig brigade brightness brilliance
    brilliancy brim bringing brink broadcasting broadening broadside broiler brokerage bronc bronchiole bronchiolitis
    bronchus broom brothel brotherhood brow brucellosis brushing brutality buckboard bucket buckskin buffalo buggy
    bugle builder building buildup bulb bullet bullethead bumblebee bunk bunt burden bureau bureaucracy burglary
    burial burner burr bursitis bus bush bushel business businessmen butter butterfat buttocks button buying cab
    cabana cabbage cabin cabinet cache cadaver cadence cadenza cadre cafe cafeteria cage cake calamity calcification
    calcium calculation calculus calendar calf caliber calibration calibre callousness calmness calorimeter calumny
    calving camaraderie camera campfire camping cancellation cancer candidacy candle candlewick candour candy caning
    cannon canon cant canteen cantilever cantle canvas canyon canyonside capability capacitance capacitor capacity
    cape capillary capital capitalism capstan capsule captivity car carabao caravan carbine carbon carbonate carcass
    card cardboard cardiomegaly cardroom cards career careerism carelessness cargo carload carnival carpentry carpet
    carriage cartilage carton cartoon cartridge cartwheel carving case cashmere casino castanets castigation castle
    cat catalog catastrophe catcall catching catecholamine category caterpillar catharsis cathedral catheter cathode
    catkin cattle cavalcade cavalry cave caveat cavern cavity ceiling celebration celerity cell cellar cellulose
    censorship censure census cent centennial centerfield centering centimeter century cerebellum ceremony certainty
    certificate certification certiorari certitude chagrin chain chair chaise champagne championship chance chancel
    chandelier chaos chapel chapter charger chariot charisma charity charnel chastisement checkbook checklist checkout
    checkup cheek cheekbone cheerfulness cheering cheese cheesecloth chemistry chest chick chicken chignon childhood
    childishness chimney chisel chivalry chloride chlorine chock chocolate choice choir cholesterol chomp chopper
    chord chore choreography christening chromatogram chrome chromium chrysanthemum chunk church chute cicada cigar
    cigarette ciliate cilium cinch cinema circuit circuitry circulation circumference circumstance circumstances
    circus citation citron citrus civilization clairvoyance clam clamoring clamshell clan clangor clangoring
    clannishness claret clarity class classics classroom clause clay cleaner cleaning clearance clearness cleat clergy
    clerking cleverness cliche clientele cliff climate clique cloak clock clocking clodhopper closet closeup closure
    cloth clothes clothesbrush clotheshorse clothesline clothing cloud cloudburst clover clowning club clubfoot
    clubhouse clue clump clutches coaching coal coalescence coalition coast coating coattail cocaine coccidiosis
    cockatoo cockpit cockroach coconut cocoon code codification coefficient coexistence coffee coffeehouse coffeepot
    coffin cognizance cohesion cohesiveness coincidence coldness collaboration collage collection college collision
    collusion colon colony colors colt columbine column coma combination combo combustion comeback comedy comet
    comforts commandment commentary commerce commercialism commiseration commissary commission commitment committee
    commodity commonwealth commotion communicating communication communion communique communism community commutation
    commutator commuting companionship company comparison compartment compass compassion compensation competence
    competition compiling complaint complaisance completeness completion complexion complexity compliance complication
    complicity component comportment composing composite composition compost composure compounding comprehension
    compulsion compulsivity compunction computation computer conceit concentration concept conception conceptuality
    concert concertina concerto concession conciseness conclave conclusion concurrence concussion condemnation
    condensation condenser condescension condition conditioner conditioning conduction conductivity cone confederacy
    conference confession confidence configuration confinement confines confirmation conformity confrontation
    confusion congestion congregation congress conjugate conjunction connection connotation conquest conscience
    consciousness conscription consensus consequence conservation conservatism consideration consistence consistency
    consolation consolidation consonant conspiracy constancy constatation constellation consternation constitution
    constriction construction consultation consumption container contamination contemplation contempt contention
    context continence continent contingency contingent continuance continuation continuity continuum contortion
    contour contrabass contraception contraceptive contraction contradiction contraption contribution contrition
    contrivance controversy contusion convection convenience convent convention conversation conversion convertible
    convexity conviction convoy cookfire cookie cooking coolant cooler cooling coolness coop cooperation coordination
    coping copper coral cord corduroy corduroys core cork corkscrew corn cornmeal corona corporation corporeality
    corps corpse corpulence correction correctness correlation corridor corruption corsage cortex corticotropin
    cosecant cosmos cottage cotton cottonmouth coughing council counseling countenance counterpart countershot
    counting country coup coupling coupon courage course courtesy courtyard cove coverage coverlet covetousness cow
    cowardice cowhide cowling cows coyness coyote cps crab cracker craft craftsmanship crag cramp crassness crate
    craze cream creation creativeness creativity creche credo creed creek creeper crevice crew crib cricket crime
    criminality crisis crispness criterion criticism croaking crossing crossroad crossroads crowbait crucifix
    crucifixion crudity cruelty crupper crusade crusher crust crutch cryostat crystal crystallite cubism cud cuff
    cufflink culmination cult cultivation culture cumulus cunning cup cupboard cur curbside curio curiosity currant
    currency curriculum curtain curtness cushioning cusp custody custom cutlass cylinder cyst cytolysis cytoplasm
    dadaism daffodil dagger daiquiri dairy dais daisy damnation dancing dandelion danger darkness data date datum dawn
    dawning day daybed daybreak daylight days daytime deadline deadlock dealing dealings death deathbed debacle
    debauch debility debris debt debunking dec decade deceit deceleration decency decimeter decision deck declamation
    declaration declivity decomposition decor decoration decorum decrement dedication deduction deed deepening deer
    defect defection defense deference defiance deficiency deficit defining definition deflection deformation
    degeneration degradation degree dejection delegation deliberation delicacy delineation delirium deliverance
    delivery delta deltoid deluge demeanor demimonde democracy demolition demonstration demonstrative denial
    denomination denouement denseness densitometry density denture denunciation department departure dependence
    dependency depletion depot depravity depreciation depredation depression depth dereliction derision derivation
    derivative descendants descent description desecration desertion designation desk desolation desorption
    desperation despondency despotism dessert destroyer destruction detachment detail details detecting detection
    detector detergency detergent deterioration determinant determination deterrent development deviation device
    devilment devotion dew dexamethasone diabetes diagnosing diagnosis dialect dialectic dialogue dialysis diam
    diameter diamond diaper diaphragm diarrhea diarrhoea diary diatom dice dichondra dickens dictatorship dictionary
    dictum diet difference difficulty diffraction diffusion dignity dilemma diligence dilution dime dimension dimer
    diminution dinner dinnertime diplomacy dipole dipper direction directive directivity directory dirge dirt
    disability disadvantage disagreement disappearance disapproval disarmament disarray disassembly disaster disbelief
    disc disclosure discomfited discomfort discontent discontinuity discourse discovery discrepancy discretion
    discussion disease disengagement dish dishwasher dishwater disinterest disk dislocation disloyalty dismay
    dismissal disobedience disorder disparagement dispensary dispensation dispenser dispersal dispersion displacement
    displeasure disposal disposition dispossession disrepair disrepute disruption dissection dissemination dissension
    disservice dissociation dissolution distance distaste distension distillation distinction distinctness distortion
    distraction distress distribution disturbance ditch ditty divan divergence diversion diversity divertimento
    divestiture dividend diving division doctorate doctrine documentary dodging dog doggerel doghouse dogma dogwood
    doll dollar domain dominance domination dominion donation door doorbell doorhandle doorknob doorway dooryard dope
    dormitory dosage doubleheader dough doweling downfall downpour dowry dozen dozens drafting drainage drama
    dramatics drapery draught drawer drawing dregs dresser drinking driveway drizzle drone droplet droppings dross
    drought drowsiness drug drugstore drumhead drumlin drunkenness drygoods dryness ducking duct duel dugout dumbbell
    dune dung dungeon duplication durability duration dusk dust dustbin dustpanful duty dwelling dyeing dynamics
    dynasty dysentery eagerness eagle ear earnestness earnings earphone earth earthquake easel easter eating ebbing
    eccentricity economics economy ecstasy edema edifice edition editorial education effectiveness efficacy efficiency
    effluent effort egg eggplant eggs ego egotism ejaculation ejection elaboration elasticity elation elbow election
    electricity electrode electrolysis electromagnet electron electronics electrophorus electroshock elegance element
    elephant elevation elevator elimination elite ell ellipsoid elm eluate elution emanation embankment embargo
    embarrassment embassy emblem embracing emergence emergency emigration eminence emission emotion emotionalism
    emotionality emphasis emphysema empiricism employment emptiness enactment enchantment enclosure encouragement
    encroachment encumbrance encyclopedia ending endowment endurance energy enervation enforcement engagement engine
    engineering enigma enjoyment enlargement enlightenment enormity enrichment enrollment ensemble entanglement
    enterotoxemia enterprise entertainment enthalpy enthusiasm entirety entity entrance entranceway entrant entropy
    entry envelope environment enzyme epaulet epidermis epigram epiphany epiphysis episode epistemology epitaph
    epithet epitome epoch epoxy equality equanimity equation equilibrium equipment equity equivalence equivalent era
    erosion errand error eruption escalation escapade escheat escritoire espionage essay essence establishment estate
    estrangement estuary eternity ethanol ethic ethics ethos etiquette euphoria eutectic evacuation evaluation
    evangelism evaporation evening evensong event evocation evolution exacerbation exaggeration examination example
    exasperation excavation excellence excelsior exception excitability excitement exclaiming exclamation exclusion
    exclusiveness excretion excursion excursus execution exemplar exemption exercising exertion exhaustion exhibition
    exhortation exhumation exigency existence exit exodus expanse expansion expansiveness expectancy expectation
    expedition expenditure expense expertise expiration explanation expletive exploitation exploration explosion
    exposition exposure expression expulsion expurgation extension extent extrapolation extravaganza extremity
    exultation eye eyeball eyebrow eyelid eyepiece eyes eyeshadow eyesight eyestrain fabric facade facet facility
    facing facsimile fact faction factor factory faculty fadeout failure fairness fairyland fairytale faith falcon
    falloff fallout falsity fame familiarity family fanaticism fanfare fantasia fantasy fantods farce farewell farm
    farmhouse farming fasciculation fascination fascism fastball fatigue faucet fault fauteuil feasibility feat
    fecundity fedora fee feebleness feedback feeder feeding feedlot feeler feeling feelings fellowship femininity
    fence fencing fender ferment fermentation ferocity fertilizer fervor festival festivity fever fiat fiber
    fiberglass fibrin fibrosis fiction fiddle fidelity fielding fieldstone fierceness fifties fig fighting figurine
    figuring filing filling fillip filly film filming finale financing finding fineness finger fingering fingernail
    fingerprint fingertip finishing firearm firecracker firelight fireman fireplace firepower firewall firewood
    firework firing firmness fishing fist fitness fixing fixture flag flair flame flannel flashback flashlight flask
    flatness flats flattery flatus flavor flaw flea fleck flesh flexibility flight flint floc flocculation floodhead
    floor floorboard flooring flour flower flowerbed flowering flu fluff fluid fluorescein fluorescence fluoride
    fluorine fluoroboride flute flux flyer focusing fog foible foliage folk folklore folks folly fondness food
    foodstuff foolishness foot footage football footbridge footing footnote footpath footprint footstep foraging
    forearm foreboding forecasting forefinger foreground forehead foreknowledge foresight forest forgetfulness fork
    formalism formation formative formula formulation fort forte forties fortification fortitude fortress fortune
    forwarding fostering foundation founding foundry fountain fountainhead foursome fowl foyer fracas fraction
    fractionation fragment fragmentation fragrance frambesia framework framing franchise frangipani fraternity freckle
    freedom freeway freight freighter frenzy frequency freshness friction friendliness friendship frieze fright fringe
    frog frontage frontier frostbite froth fruit fruitfulness frustration fulfillment fullness fumes functioning fund
    fundamentals funds funeral fur furlong furnace furniture furor fury fusion futility fuzz gabardine gable gadget
    gadgetry gage gaiety gait gal galaxy gallantry gallbladder gallon gallows gallus galvanism gambling game gamecock
    gamma gamut gang gap garb garbage gardening garment gas gasoline gastrocnemius gastronomy gate gatepost gateway
    gathering gauss gavotte gearset gee gegenschein gelding gem gender generation generator generosity genesis genre
    gentian gentry genus geochemistry geology geometry germ germanium gibbet giddiness gift gig gingham ginkgo ginmill
    giveaway givenness giving glacier glamor gland glanders glass glasses glaucoma glee glibness glimmer globe
    globulin gloom glory glossary glove glycerine glycerol goal goat goitre goitrogen gold golf golfing goodness goose
    gospel gossip gourd gout governed government gown grace grade gradient grading graduation grain graining gram
    granary grandeur granite granule grape grapevine graph graphite grappling grasping grass grassfire grasshopper
    grate gratification grating gratitude gravestone gravity gravy greatcoat greatness greed greenhouse greenness
    greenroom greens greeting grenade grief grievance grille grinding gripe gristmill grocery groin groove grounder
    grounds groundwork group grouping grove growling growth grub grudge guessing guidance guideline guidepost guilt
    guitar gulf gulping gum gun gunfire gunplay gunpowder gunshot gust gusto gut guts gutter gym gymnastics gyration
    haberdashery habit hackwork haiku hair haircut hairdo halftime hall hallelujah hallmark hallucination hallway halo
    halogen halter ham hamlet handbag handclasp handful handiwork handkerchief handlebar handling hands handshaking
    handspike handstand handwriting hangover happening happiness hardbake hardship hardtack hardware hare harem
    harmony harshness hasp haste hat hatching hatchway hatred haunch haven haversack havoc hay haystack haze headache
    headgear heading headland headlight headlinese headquarters headstand health hearing heart heartbeat hearth heater
    heating heaver heaviness hedonism heel height helium hello helm helplessness hem hemoglobin hemorrhage hemorrhoid
    hemosiderin hen hepatitis heredity heritage hermeneutics heroics heroism herringbone hesitancy hesitation hex
    hexameter heyday hiding hierarchy highroad highschool highway hilarity hill hillock hillside hilt hilum hinge hip
    hissing histology history histrionics hive hobby hodgepodge hoe holder holding holdup hole holiday hollering
    hollowness hollyhock holocaust holster holystone homebound homefolk homer homicide homogenate homogeneity honesty
    honeybee honeysuckle honkytonk hoof hookup hookworm hoop hopper hopscotch horde hormone horn hornpipe horoscope
    horror horse horseback horselaugh horsemanship hospital hospitality hostelry hostility hotel hotness hour hours
    housebreaking household housekeeping housework housing hub hubbub hubris hue humanism humanity humidity
    humiliation humility humor hunger hunting hurricane husbandry hut hutment hyacinth hyalinization hydride
    hydrocarbon hydrochloride hydrogen hydroxide hydroxymethyl hymn hyperemia hyperplasia hypertrophy hypervelocity
    hypocrisy hypothalamus hypothesis hysteria ice icebox icicle idea idealization identity ideology idiom
    idiosyncrasy idleness ignorance ileum ilk illegitimacy illness illumination illusion illustration image imagery
    imagination imaging imbalance imitation immediacy immensity immigration imminence immobility immortality immunity
    impact impairment impasse impatience imperialism impetus impinging implication importance importation importunity
    imposition impotence impotency imprecation impression imprimatur imprisonment impropriety improvement impulse
    impunity impurity inability inaccuracy inaction inadequacy inadvertence inauguration incantation incense incentive
    inception inch incidence incipience incipiency incitement inclination income incompetence inconvenience
    incorporation incubation inculcation incursion indecision indefinity indentation independence indexing indication
    indicator indictment indifference indigestion indignation indignity indirection individualism individuality
    indolence inducement induction industrialism industry inequality inertia inevitability inexperience infancy
    infantry infatuation infection inference inferiority infidelity infield infiltration infinitive infirmary
    infirmity inflation inflection infliction inflow influx information ingratitude ingredient ingroup inhalation
    inheritance inhibition initiation initiative injection injury injustice ink inkling inlet inn inning innocence
    innovation inoculation input inquest inquiry inroad insanity inscription insect inset insight insinuation
    insistence insolence insouciance inspection inspiration instability installation installment instance instancy
    instant instillation instinct institution instruction instructions instrument insularity insulation insulin
    insurance insurrection intake intangible integer integrating integration integrity intellect intelligence
    intensity intention intentness interaction interceptor interchange intercourse interest interface interference
    interlayer interlude intermarriage intermission interplay interposition interpreting interrelation interrogation
    interrogative interruption intersection interval intervention intima intimacy intimidation intolerance intonation
    intransigence intrenchment introduction introject intrusion intuition inundation invasion invention inventory
    inversion investigating investigation investment invitation invocation involvement iodide iodination iodine
    iodocompound iodoprotein iodothyronine iodotyrosine ion irons irony irregularity irresolution irreverence
    irrigation irritability irritation irruption island isle ism isocyanate isolation isomer issuance italic item
    ivory ivy jackdaw jacket jade jargon jazz jealousy jeep jejunum jelly jeopardy jewel jibe jonquil joss jot journal
    journalese journalism journey journeying joust jowl joy judgment judiciary jug juice juju jukebox junction
    juncture jungle jurisdiction jurisprudence jury justice justification justness juxtaposition kale kamikaze
    keenness keeping keepsake kerchief kerosene kerygma ketch ketosis kettle keyboard keyhole kickoff kidney killing
    kilometer kind kindergarten kingdom kinship kissing kit kitchen kitchenette kitten knack knapsack knee kneecap
    knife knob knocking knoll knowledge knuckle knuckleball lab laboratory labour labyrinth ladder lager lagoon laity
    lake lamb lamentation lamp lamplight lance landing landler landmass landrover landscaping landslide lane language
    languor lantern lapel lappet larkspur larva lat laudanum laughter launcher launching laundering laundry laurels
    lavatory law laxness layette laying layoff layout leaders leadership leaf leafhopper leaflet league leakage
    leapfrog learning leash leather leavening leaving lecturing ledge ledger leech leftfield leg legacy legation
    legend legibility legion legislation legislature legitimacy legume leisure leitmotiv lemma lemon lemonade lending
    length lens lentil leprosy lesion lessening lesson letdown lethality lethargy letter letterhead lettering letters
    level lever levis lexicon liability liaison liberalism liberation liberty library libretto licking lid life
    lifetime ligament lighting lightning lignite likelihood likeness liking lilac lilt limb limbo limitation linden
    lineage linen liner lineup linguistics links linoleum lint lion lip lipstick liquidation liquor liter literalism
    literalness literature litigation livelihood liveliness liver livestock lizard loading lobe loblolly lobscouse
    lobscuse lobularity lobule localization location locker lockup locust lodging lodgings loft logarithm logic
    logistics loins loneliness longevity longing longshot lookup loophole lordship lore loss losses lot lotion lots
    lotus loudspeaker louse lousiness loveliness lowland loyalty lucidity luck luger luggage lullaby luminescence
    luminosity lunation lunch luncheon lunchroom lung lust luster lustre luxury lymphocyte lyric machine machinery
    mackinaw macrophage madness magazine maggot magnet magnetism magnification magnificence magnitude magpie mahogany
    mailbox mainland maintenance majesty majority majors makeready makeup making malady malaise malaria malediction
    maleness malevolency malignancy malingering mammal management mandamus mane manfulness manhood mania manifestation
    manifold manipulation mankind manner manners manometer manor manpower manse mantel mantle manual manufacturing
    manumission manure manuscript manzanita maple marathon marble marbleizing marbles margin marginality marker
    marketing marketplace marking marksmanship marmalade marquee marriage marrow marrowbone marsh martini mascara
    masculinity masking masonry mass masses mast masterpiece mastery mat material materialism math mathematics mating
    matrimony matrix matsyendra maturation maturity mausoleum mayflower maze meal meaning meanness means measurement
    measuring meat mechanics mechanism medal medication medicine mediocrity meditation medley meeting megalomania
    megaton melee melioration melodrama melody melon membership membrane memoir memorabilia memorandum memorial
    memorization memory men menarche mentality menu meq merchandising mercury mercy merger merging merriment
    merrymaking mess message metal metaphor meteor meteorite method metro micelle microcosm micron microorganism
    microphone microphoning microscope microscopy microsecond microwave midday midnight midsection midsummer midwatch
    mien migration mile mileage milestone milieu militia millennium milliampere millidegree milligram milliliter
    millimeter millpond millwheel mimesis mimicry min mineral mineralogy mingling mining ministration ministry
    minority mint minuet minute minutia miracle mire misbehavior miscegenation mischief misconception misdeed
    misdemeanor misery misfortune misgiving mismanagement misnomer missile mission missive mist mistaking mite
    mitigation mixing mixture mob mobcap mobility mobilization mockery mode moderation modernism modernity
    modernization modesty modification modifier modulation moire moisture molding molecule moment momentum monastery
    money moneymaking monitoring monkey monochrome monocle monograph monologue monomer monopoly monosyllable monotony
    monsoon month monument mood moon moonlight morale morality morals mores morgue morning morphology morrow morsel
    mortality mortgage mortification mosaic mosquito moss motel moth motif motion motivation motive motorcar motto
    mound mountain mountainside mouse mouth mouthful mouthpiece movement movie mph mucosa mucus mud muddle mudguard
    muff muffler mulch mule multiplicity multitude munition murmuring muscle musculature museum music musicianship
    musing musket musketry mustache mutilation mutiny mutton mutuality muzzle myelofibrosis myocardium myofibril
    myofibrilla myrrh mystery mystique myth mythology nadir nakedness narrative narrowing narrowness nation
    nationalism nationality naturalism naturalness naught nausea navel navigation navy nearness necessity neck
    necklace necktie necropsy necrosis nectar nectary negation negligence negotiation neoclassicism neocortex nerve
    nerves nervousness nestling network neurosis neuter neutralism neutrality neutrophil news newsletter newspaper
    nicety niche nickel nicotine night nightclub nightdress nightfall nightingale nightmare nightshirt nighttime
    nihilism nineties nirvana nitrate nitrogen nobility nodule noise noisemaker nomia nomination nonfiction
    nonoccurrence nonsense noon noradrenaline nose nostalgia notation notebook nothing notification notion noun
    nourishment novelty novitiate nozzle nuance nubbin nucleolus nucleus nuisance number numbering numbness nursery
    nursing nuthouse oak oat oath oatmeal obedience obelisk objection objective objectivity obligation obliteration
    oblivion obscenity obscurity observance observation obsidian obstacle obstruction obtrusiveness obverse occasions
    occlusion occupancy occupation occurrence ocean ocelot ocher octahedron octave odds odor odyssey offence offense
    offering office offstage oil oilcloth oleander ology omen omission oneness onrush onset onslaught opener openwork
    opera operation operations operetta opinion opium opportunism opportunity opposition oppression optimism opus
    oration oratorio orb orchard orchestra orchestration orchid ordeal ordering orderliness ordinance ordinate ore
    organ organism organization orgy orientation orifice originality orthicon orthodoxy orthography oscillation
    oscillator ossification osteoporosis ounce outbreak outburst outcome outcry outfield outfit outflow outing outlay
    outlet outlook outpost outreach outset oven overcast overcoat overeating overhang overpayment overshoe overtime
    overtone overture owl ownership oxcart oxen oxidation oxygen oyster ozone pachinko pacification pacing packaging
    packet packing packinghouse pact paean paganism page pageant paging pail pain pains painting palace paleocortex
    palette pallor pamphlet pane paneling pang pansy pantheon panther pantry pants pap paper paperback papers
    paperwork par parable parachute paradigm paradox paragon paragraph parakeet parallelism paramagnet parameter
    paraphernalia parasite parchment parenchyma parenthesis parenthood parimutuel parish parisology parking parlance
    parliament parlor paroxysm parsonage part participation particle partition partnership party passage passageway
    passion passivity pastime patchwork path pathogenesis pathology pathos pathway patience patina patriotism
    patronage patter pattern paucity pavement payday payment payroll pea peace peacock peak peal pealing pear
    peasanthood pebble pecs pectoral pectoralis peculiarity pedestal pedigree peg pegboard pelting pelvis pemmican
    penalty penance pencil pendulum penetration peninsula pennant penny pension pentagon penthouse peony people
    peptidase percent percentage perception perchlorate percolator percussion perfection perfectionism perforation
    performance perfume perfusion peril period periodical periodicity periphery periwinkle permanence permission
    peroxide perpetration perpetuation persecution persistence persistency person persona personnel perspective
    perspiration pertinence perturbation perusal pervaporation pessimism petal petulance pew pfennig phagocyte phalanx
    phantasy pharmacy phase pheasant phenomenon phenothiazine philippic philosophy phloem phoneme phonemics phonetics
    phonograph phonology phosgene phosphate phosphorus photo photography photomontage photon phraseology phrasing
    phylum physicalness physics physiognomy physiology physique pianism piano picking pickle pickup picture picturing
    pidgin pie piece piety pig pigeon pigment pigskin pike pilgrimage pill pillar pillow pimple pinafore pinball pine
    pinecone pinnacle pipe pique pirogue pistol pitchfork pitching pitfall pith pituitary pizza placement plane planet
    planetoid plantation planting plaque plasma plasticity plate platform platinum platoon playacting playback playing
    pleasure pleat plenitude pleura plight plowing plowshare plumbing plumpness plunker pneumonia pocket pocketful
    poem poetry poignancy polarity polarization policy polio politeness politics polka pollen pollution polybutene
    polyethylene polymyositis polynomial polyphosphate pompousness poncho pond pony poplin poppy populace popularism
    popularity population porch porcupine pork porkchop porosity portal porterhouse portfolio portion portrait
    portrayal position positivism posse possession possibility possum poster postmark postscript posture pot potassium
    potato potency potentiality potentiometer pothole potpourri potshot pottery pouch poultry pounder pounding poverty
    powder power powerfulness powwow prank prayer preaching preamble precaution precedence precedent precipice
    precipitin precision preconception predicament predicator prediction predilection prednisone predominance
    predomination preexistence preference preferment prefix prejudice prelude premiere premise premix premonition
    preoccupation preparation preposition prerequisite prescription preseason presence presentation presentment
    presentness preservation presidency pressure prestige presumption pretence pretense pretension pretext prettiness
    prevalence prevention prevision price pricing primacy primer priming primping principle printing priority prison
    privacy privilege privy prize prizefight probability problem procedure proceeding proceedings proceeds process
    processing procession processor proclamation procreation procurement product production productivity profanity
    profession professorship proficiency profile profitability profits profundity profusion program progression
    progressivism prohibition projectile projection proletariat proliferation prolongation prominence promotion
    pronoun pronouncement proof propaganda propagation propeller property prophecy proportion proposal propriety prose
    prosecution prosody prospect prosperity prostitution protease protection protein proteolysis protestation proton
    protoplasm prototype protozoan protuberance proverb provincialism provision provisions proviso provocation prowess
    proximity prudence pseudophloem psi psychology psychotherapy pterygium publication publicity publishing pulley
    pulling pulp pulpit pulsation pun punctuality punishment pup puppet puppy purgatory purging purification purity
    purpose pursuit pushup pussy putout puzzlement pyrometer python quackery quadriceps quadrupling qualification
    quality qualm quantity quantum quart quarter quarters quartz quatrain quaver quest questioning questionnaire
    quickening quickie quickness quietness quill quilt quintet quirt quiz quota quotation rabbit rabble racing racket
    radar radiance radiation radiator radicalism radio radioactivity radiochlorine radish radius raft rafter rag
    railhead railing railroad railway rainbow rainfall ramification ramp rampart ramrod ranch rancor randomization
    rank ransom rapidity rapport rapture rasp rat rathole rating ratio ration rationale rationalism rationing rattler
    rattlesnake rattling ravage rawhide ray razor rbi reactant reaction reactivity readiness reading readjustment
    reagent realism reality realization realm reappearance rearguard rearing reason reasoning reassurance rebellion
    rebuilding receipt receipts receptacle reception recession recital recklessness reckoning recognition recollection
    recorder recording recourse recovery recreation recrimination recruitment rectangle rectifier rectitude
    recuperation recurrence redefinition redemption redeposition redevelopment rediscovery reducing reduction
    redundancy reef reelection reenforcement reevaluation refectory reference referendum refinement reflectance
    reflection reflector reflex refocusing refrigeration refrigerator refueling refusal regime regiment regimentation
    registration registry regularity regulation regulator rehearing rehearsal reimbursement reinforcement rejection
    relatedness relation relations relationship relevance relevancy reliability reliance relic relief religion
    religiousness reliving remainder remains remembrance reminder remission remnant remonstrance remorse removal
    remuda remuneration rendering rendezvous rendition renewal renovation renunciation reorientation repayment
    repentance repertory repetition replacing replenishment replication reporting repression reprieve reprisal
    reproduction reproof reptile republic repugnance repulsion reputation requirement research resemblance resentment
    reserpine reserves reservoir residue resignation resilience resistance resistor resolution resonance resorcinol
    resource respects respiration respite response restatement restaurant restlessness restoration restraint
    restriction resumption resuspension retailing retaliation retardation retention retentiveness retina retirement
    retraining retreated retribution retrospect retrospective retrovision reunion revelation revelry revenue
    reverberation reverie reversal reversibility revery revetment revision revival revolt revolution revolver
    revulsion rheumatism rhino rhinoceros rhubarb rhythm rib ribbon riboflavin rice richness ridge rifle rift
    righteousness rightfield rightness rigor ringing riot ripening rite ritual river riverbank rivulet road roadblock
    roadside roadway roaring robbery robustness rocket rodeo role roleplaying roller romance romanticism roof rooftree
    room roomful rooms rooster rooting rope rosary rosebud roster rostrum rotation rotor rotundity roughness
    roundhouse roundup royalty rpm rubber rubbish rubble rubric ruby ruck rudder rudeness rug ruling rumen rumor rump
    rumpus rundown runoff rushing russet rustling rutabaga ruthlessness sable sabotage sacrament sacrilege saddlebag
    sadism sadness safety sagebrush sailing sake salad salamander salary sale salesmanship saline saliva salmon salon
    saloon salt saltwater salvation salve salvo sameness sampler sampling sanctity sandal sandalwood sandpaper
    sandwich sanitation sanity sapling sarcasm sardine sash sassing satellite satiety satin satire satisfaction
    saturation sauce sausage savageness saving savings sawdust sawhorse scaffold scale scalp scandal scapular scar
    scarcity scarf scavenger scenario scene scenery scent scepticism scheme scherzo schism scholarship school
    schooldays schoolhouse schooling schoolroom sciatica science scimitar scoffing scoop scope scoreboard scores
    scourge scouring scours scouting scraping scratchiness screenplay screwdriver script scripture scrutiny scuffle
    sea seacoast seagull seahorse sealing seam seaquake searchlight season seawater seaweed sec secrecy secretion sect
    section sector secularism security sedan sediment sedimentation seduction seedbed seedling seedpod seepage segment
    seismograph seizure selection selfishness selling semblance seminary semitrance senate sending seniority sensation
    sensibility sensing sensitivity sensor sensuality sentiment separation sepia sept septation septum sequence
    sequestration serenity serialism series seriousness sermon serpent serratus serum service services serviette
    session setback settlement setup severalty severing severity sewage sewing sex sextet sforzando shack shackle
    shading shadow shaft shallowness sham shame shamrock shantung shanty shaping shard shark sharpness shaving shawl
    sheaf sheath sheep sheepskin sheet shelf shell shelter shenanigan sherry shibboleth shielding shim shin shinbone
    shipbuilding shipment shipwreck shipyard shirking shirt shirtfront shirtsleeve shirtsleeves shit shoe shoeful
    shoelace shoes shoestring shooter shooting shore shortage shortcut shortness shorts shotgun shoulder shouting
    showcase showdown showerhead showing showpiece showroom shrapnel shrieking shrine shrub shrubbery shucks shuffling
    shutdown shutter siamese sickness sickroom sideboard sidewalk sidewinder siding siege sieve sight sightseeing
    signaling signature significance signpost silicate silicone silk silkworm sill silo similarity simile similitude
    simplicity simulation sincerity sinfulness singularity sinking sinusoid sirloin situation sixties size skeet
    skepticism skiff skill skin skit skulking skull skullcap sky skylight skyscraper slab slacks slapstick slat
    slavery sleeve slicker slinging slingshot slippage slipper sloe slogan sloganeering sloop slope slovenliness
    slowing slowness sludge smallness smallpox smokehouse smoking smoothness snack snail snapdragon snapshot sneaker
    snip sniveling snout snowfall snuffbox snuffer soap soapsuds sobriety sociability socialism sociality society sod
    soddy sodium sofa softness soil sojourn soldiering soldiery solemnity solicitude solidarity solidity solipsism
    solitude solo solution solvent someone somersault somersaulting sonar song sonnet sonogram sonority sorority
    sorption sorrow sort soundtrack soup source soutane southernism southwest souvenir sovereignty sowbelly space
    spacing spaciousness spaniel sparrow spasm spatiality speakeasy speaking specialty species specification
    specificity specimen speck spectacle spectacles spectrometer spectroscopy spectrum speculation speech spelling
    spending sphere spherule spider spike spine spinnability spire spirits spite splatter spleen splendor splenomegaly
    splicing splinters splutter sponsorship spontaneity spoon spoonful spore sport spraying spree springboard
    springtime sprinkling sprue spume sputnik sputtering squabble squad squadron squirrel stability stabilization
    stadium staginess stagnation staining stair staircase stairs stairway stairwell stamen stance standby standpoint
    standstill staple starboard stardom starlight starter startup starvation statement statesmanship stationery
    statistic statuary statue statuette stature status statute stead steak steakhouse stealing stealth steamboat
    steamship steed steel steeple stenography steppe steps stereo stereotype sternum steroid stethoscope stewing
    stickpin stiffening stiffness stillness stilt stimulant stimulation stimulus stirrup stock stockade stocking
    stoicism stomach stone stool storage storefront storehouse storeroom story storyline strait strangeness
    strangulation stratagem strategy straw strawberry streamliner street streetcar streetlight strength striation
    strife stripe striving structure strychnine stub stubbornness stucco studio stumping stupidity stupor style
    stylemark stylization subcommittee subcontinent subdivision subfigure subgroup subjugation submarine submission
    submucosa subpart subscription subsection subsidy subsistence subsoil subspace subspecies substance substation
    substitution substrate subsystem subterfuge subtlety subway success succession succor suction suddenness suds
    suffering suffix suffocation suffrage suggestion suicide suitability suitcase suite sulfur sum summarization
    summary summation summer sun sundial sundown sunlight sunray sunshade sunshine superhighway superiority
    supermarket superstition supervision supper suppleness supremacy surety surf surface surfactant surroundings
    surveillance surveying survival sushi suspense suspension suspicion sustenance swad sward swash swatch swathing
    swearing sweatband sweater sweatshirt sweetness swig swimsuit switchboard switching sword syllabicity syllable
    symbol symbolism symmetry sympathy symphony symposium symptom synagogue synchronism synchrony syndicate syndrome
    synergism synonym syntax synthesis syringa system table tableau tablet tabletop tabulation tact tactic tactics
    tadpole taffy tail tailgate taint takeoff takeover takings tale talking talks tallow tally tampering tan tang
    tangent tangle tango tank tanker tantrum tape tapestry tar tariff tarpaulin task tavern tea teacart teaching
    teakettle teakwood team tears teasing teaspoonful teat technique technology teens telegram telegraphy telepathy
    television temerity temper temperament temperature tempest temple tempo temptation tenacity tenancy tendency
    tenderness tending tendon tenement tenet tennis tenor tense tension tent tentacle tenting tenure termination
    terminology terms terrace terrier territory terror terrycloth testament testicle testimonial testimony testing
    text textile texture thankfulness thanks thanksgiving thatch thawing theater theatre theme theology theorem theory
    therapy thermistor thermocouple thermometer thermometry thermopile thermostat thermostatics thesis thiamin thicket
    thickness thigh thighbone thill thing things thinking thinness thiocyanate thiouracil thirst thirties thong thorn
    thoroughfare thoroughness threat threshing threshold thriller throat throe thrombosis thrombus throne thruway
    thuggee thumbnail thwack thyroglobulin thyroid thyronine thyrotrophin thyroxine ticket tidbit tide tidewater
    tidings tightening tile tilth timber timbre time timeliness timepiece timer times timetable timidity timing tin
    tine tissue tit titer title titration toad tobacco toddy toe toffee toilet token tolerance tollgate tollhouse
    tomato tomb tomorrow ton tongue tons tool tooth toothbrush toothpaste topic topography topsoil torch tornado
    torpor torrent torso totality touchdown touchstone toughness tournament tow towboat towel toweling toxin toy
    trachea tracing tract tractor trademark trading tradition traffic tragedy traineeship training trait trance
    tranquility tranquilizer transaction transcription transducer transformer transfusion transgression transience
    transistor transit transition translation translucence transmission transmutation transpiration travelogue tray
    treachery treadmill treason treasury treatment treaty tree treetop tremor trench trepidation trestle trial
    triamcinolone triangle tribunal tribute trill trinket trio trip triphammer tripod triumph triviality troika troop
    troops trough troupe trouser truck trucking truculence trunk truth truthfulness tsunami tub tube tuberculosis
    tubing tubule tuft tuition tularemia tulip tumor tumour tumult tune tungsten tuning turban turbinate turbine
    turbulence turf turkey turmoil turning turnover turnpike turntable tutorial tweed twenties twilight twinge type
    typewriter typewriting typhoid typhus typing typography tyranny tyrosine ugliness ulcer ulceration ultimatum
    umbrella unambiguity unawareness unbalance uncertainty unconcern unconfessed underbrush undercurrent undershirt
    understanding undertaking underwear underworld undoing uneasiness unemployment unfolding unhappiness unification
    uniform uniformity uninitiate union uniqueness unit unity universality universe university unloading unrealism
    unreality unreason unrest unselfishness untruth unwillingness upheaval upkeep uplifting uppercut uprising uproar
    upshot uptake urgency urging urine urn usage usefulness uselessness utensil utility utilization utopia utterance
    vacancy vacation vacationing vaccinating vaccination vaccine vacuolization vagabond vagueness validation validity
    valley valor valuation value values valve vandalism vanguard vanity vapor vaporization variability variation
    variety vase vaudeville vault vector vegetable vegetation vehemence vehicle vein vellum velocity velour velours
    velvet vending vengeance ventilation veracity veranda verandah verb verbena verdict verge verification vermouth
    versatility verse version vertebrate vertex vertigo verve vessel vestibule vestige vexation viability viand
    vibrancy vibration vice victory video viewers viewpoint vigilance vigilantism vignette vigor village vindication
    vine vinegar vineyard vintage vinyl violation violence violet violin virginity virtue virulence virus visage
    viscometer viscosity visibility vision vista visualization vitality vitals vitamin vividness vocabulary vocation
    vogue voice volcano volition volley volleyball voltage voltmeter volume vomiting voodoo voting vowel voyage
    vulnerability vulture wads wafer waffle wager wages wagon wailing waist wakefulness walkout walkover wall wallet
    wallflower wallpaper walnut walrus wand waning war wardrobe wardroom warehouse warehousing warfare warhorse
    warmongering warmth warning wart washbasin washbowl washing washup wastebasket wastewater watching water
    watercolor waterfall waterproofing waterway watt wattle wavelength waxing way ways wayside weakening weakness
    wealth weaning weapon weariness weather web weeds week weekday weekend weight weighting weir welfare welter
    wetness wharf wheat wheelchair whiff while whim whiskers whiskey whisky whistling whit whiteface whiteness
    whodunit whorl wickedness wicker widowhood width wig wildlife wildness wile willingness willpower windbreak
    windfall windmill window windowpane windowsill windshield wine wineglass wings winter wintertime wisdom wishing
    wisp wit withdrawal withe withholding woe wolf womb wonderfulness wood woodgrain woodgraining woodpecker woods
    woodshed woodwork wool word wording words workbench workboard workings workout works worksheet workshop worktable
    workweek world worriment worsted worthlessness wrapper wrath wreath wreckage wrestling wretchedness wrist writ
    writing wrongdoing xenon xylem xylophone yacht yard yardage yarder yardstick yaws year yearning years yelping yen
    yes yesteryear yoga yoke yucca zeal zest zinc zloty zoning zoo
    """.split()
)
"""Nouns of things that are hardly ever verbs, so that their plural is none either."""

THINGS_DONE = frozenset(
    """
    accent act alarm ambush amount angle appeal array assent audit award awe balance banter bar bargain barge bark
    barricade bay beam beard belt bench benefit bloat block blossom blow bluster board bomb breakfast breed bridge
    bristle broadcast brood brook bubble budget buffer bulk bunch bundle burrow cable camp campaign cane cap cart cash
    catalogue caution cement chamber channel charcoal charm chart charter cheer chill chin chorus circle clash claw
    climax clip cluster coat coin collar color comb combat comfort command comment complement compliment conflict
    consent contact content contest contract contrast control copy corral cost costume couch counterpoint couple court
    credit crop crowd crown cube curb curve cycle dam damage debate debut decree delight desire despair diagram din
    discharge discipline disguise dissent divorce dose doubt dream drum effect end endeavor esteem evidence exchange
    excuse exercise experience experiment face fare fashion fear feast feather feature figure fire fish flock flood
    flow flurry foam focus foil force form frame frost fuel function gag garage garden garrison gesture ghost glimpse
    grease grill hand handicap harm hazard head headline heap heat hedge herd hike honour house howl hunch index
    influence iron jail jaw jet joke jolt jumble knot labor lack land lap lapse lather layer lecture license list
    litter load loaf loan lobby log loot lull lumber map march market matter may menace merchandise merit meter milk
    mill mind mine mirror mistake mortar motor murder name needle nest object occasion order output pace package pair
    palm pan panic parade paraphrase parcel parody paste patch patent patrol pen pet petition phone photograph phrase
    picnic pile pit pity plank plant plaster plot plug point police poll pool pore pound practice pride profit
    progress proposition purse quake question rack rage rail rain range rate rear record reform refrain refund rein
    repose reproach respect rest result revenge reward rhyme rim ripple robe rock root row ruin rule saddle sample
    sand score scorn screen scrimmage sculpture sense sentence shade shape shear ship shock shop shovel shower shred
    shriek shunt signal silence sin sketch skirmish skirt slice slit slot smoke snake snow snowball sob sock sound
    spade spark spatter speed spell spiral spray spring spur square staff stage stall station stem step stick store
    storm strain strand strap streak stream stress string strip stroke struggle study stuff stump stunt subject sugar
    suit supplement swamp sweat taste tax taxi telegraph telephone term thrill throng throttle thumb thunder tire toll
    torment tour tower track trade trap treasure trick trouble vacuum view wage wave wax wheel will wind wing wire
    worship wrinkle
    """.split()
)
"""Nouns of things that are verbs too."""

GROWN = frozenset(
    """
    acetone acid adhesive agate agglutinin alabaster albumin alcohol alkali alligator aluminum alundum aminomethane
    ammoniac anionic antibody antigen apple applejack argon arsenic ash asphalt atom avocado bacon balsam banana
    barium bark barley bean beebread beech beer berry beryllium beverage biscuit bitters blackberry blossom blowfish
    bonemeal booze borate bough bramble brandy brass bread breakfast brier buffer builder burr bush butter butterfat
    cabbage calcium candy carbon carbonate cardboard catecholamine catkin cellulose cement champagne charcoal cheese
    chicken chloride chlorine chocolate cholesterol chrome chromium chrysanthemum citron citrus clay clover coal
    coconut coffee columbine compost conjugate cookie cooking coolant copper cork corn cornmeal cotton cowhide cracker
    creeper crop crystal cud currant daffodil daiquiri daisy dandelion debris dessert detergent dew dexamethasone
    dichondra diet dilution dimer dinner dirt dishwater dogwood dough draught droppings dross dung dust effluent
    eggplant eggs elm eluate emanation enzyme epoxy ethanol eutectic excelsior fallout fertilizer fiber fiberglass
    fibrin fieldstone filling firewood flint floc flour flower fluff fluid fluorescein fluoride fluorine fluoroboride
    foliage formulation fraction frangipani frost fruit fuel fumes fur fuzz garbage gas gasoline gastronomy gentian
    germanium ginkgo glass globulin glycerine glycerol goitrogen granite grape graphite grass grease greens grub gum
    gunpowder halogen ham hardbake hardtack hay helium hemoglobin hemosiderin hollyhock homogenate honeysuckle
    hyacinth hydride hydrocarbon hydrochloride hydrogen hydroxide hydroxymethyl ice icicle impurity incense ink iodide
    iodine iodocompound iodoprotein iodothyronine iodotyrosine iron isocyanate isomer ivory ivy jade jelly jonquil
    juice kerosene larkspur leaf leather legume lemon lemonade lentil lignite lilac linden linoleum lint liquor loaf
    loblolly lobscouse lobscuse log lotus lumber lunch luncheon mahogany manure manzanita maple marble marmalade
    marrowbone martini material meal meat melon mercury metal milk mineral mixture molecule monomer morsel moss mud
    mutton myrrh nectar nectary nickel nicotine nitrate nitrogen nourishment oak oat oatmeal obsidian oil oleander
    orchid ore oxygen ozone packing pansy parchment particle paste pea pear pemmican peony peptidase perchlorate
    periwinkle peroxide petal phenothiazine phloem phosgene phosphate phosphorus pickle pie pigment pigskin pine
    pinecone pith pizza plank plasma plaster platinum pollen polybutene polyethylene polyphosphate poppy pork porkchop
    porterhouse potassium potato powder precipitin prednisone premix protease protein provisions pseudophloem quartz
    radiochlorine radish ration rawhide reactant reagent residue resorcinol resuspension rhubarb riboflavin rice root
    rosebud rubber rubbish rubble rutabaga sagebrush salad saline salt saltwater sand sandalwood sandpaper sandwich
    sapling sardine sauce sausage sawdust scavenger seawater seedling seedpod sewage shamrock sheepskin sherry shit
    shrub silicate silicone sirloin sloe sludge snack snapdragon snowball sodium solvent soup sowbelly spirits
    splinters spore spray stamen steak steel steroid straw strawberry strychnine stucco stump subsoil substrate sugar
    sulfur supper surfactant sushi suspension sustenance syringa taffy tallow tar tea teakwood thiamin thiocyanate
    thiouracil thyroglobulin thyronine thyrotrophin tidbit timber tin toddy toffee tomato topsoil toxin tree treetop
    triamcinolone trunk tulip tungsten tyrosine urine vapor vegetable vellum verbena vermouth viand vine vinegar
    vintage vinyl violet vitamin wafer waffle wallflower wallpaper walnut wastewater water wax wheat whiskey whisky
    wicker wine wood xenon xylem yucca zinc
    """.split()
)
"""Those of both that are plants, food and stuff."""

PEOPLE = frozenset(
    """
    abbot abolitionist aborigine academic accomplice accountant acolyte actor actress adherent administrator admirer
    adolescent adult adulterer adventurer adversary advisor advocate aeon aggressor aide alderman alien amateur
    ambassador amorist analyst anarchist ancestor antagonist antecedent apache apologist apothecary apparition
    applicant appointee appraiser apprentice archaeologist archangel archbishop architect arianist artilleryman
    artisan artist aspirant assassin assessor assignee assistant associate atheist athlete attacker attendant attorney
    aunt author auxiliary babe baby bachelor backer ballerina balletomane ballplayer bandit banker banshee barbarian
    barkeep barnburner bartender basileus bastard bather batter beadle beadsman bearer beatnik beggar beginner
    believer bellhop beneficiary besieger bidder biologist biophysicist bishop biter blackmailer blacksmith bloke
    blonde bluestocking boatswain bobbysoxer bodybuilder bodyguard bogey bondsman booby booker bootlegger borrower
    boss bourbon boxer boy briber bricklayer bride bridegroom brigadier broker brother brute buddy buff buffoon bugler
    bully bullyboy bum bunkmate bunter burglar busboy bushwhacker businessman butler buyer caliph caller camper
    campmate candidate capitalist captain captive captor cardinal caretaker carpenter cartoonist catcher caterer
    cattleman cavalryman caveman celebrant celebrity chairman chambermaid champ champion chap charlatan chela chemist
    chief chieftain child chiropractor choirboy chorine chosen christ chump churchgoer churchman citizen civilian
    claimant classicist classifier classmate clergyman cleric clerk client clown coach cobbler collaborator colleague
    collector collegian colonel colonial coloratura columnist comedian comer commander commando commentator commie
    commissioner committeeman commoner communist companion compatriot competitor composer compulsive comrade concierge
    conductor confederate confessor confidant confidante confrere congressman connoisseur conqueror conservative
    conspirator constable consultant consumer contemporary contestant contractor contralto contributor controller
    convert conveyor convict cook coon coordinator cop coquette coroner corporal correspondent cosigner counsel
    counselor countryman courier courtier cousin coward cowboy cowhand cowpuncher crackpot crafter craftsman creator
    criminal cripple critic crofter crone crony crook culprit cultist cuss custodian customer cyclist cynic dad daddy
    dairyman dame dancer darling daughter deacon deadhead dealer dean dear deceased decedent decorator defendant
    defender deity delegate demagogue demander democrat demon demonstrator dentist dependent deportee depositor deputy
    dervish descendant descendent designer desperate despoiler detective detractor developer devil devisee devotee
    diabetic diagnostician dignitary diplomat director disciple dissenter distributor divine divinity doctor don donor
    doorman dragon dramatist draper dreamer drinker driver dropout drover drummer drunk drunkard duelist duffer duke
    dullard dwarf dweller earl earthman eccentric economist editor educator egghead egotist elder elector embodiment
    employee employer engineer engraver enrollee entertainer enthusiast entrepreneur epicure equal escort evangelist
    evildoer executioner executive executor experimenter expert explorer exporter extern fairy faker fan fanatic
    fantasist farmer father fella fellow felon fielder fieldhand fiend fighter fisher fisherman fishmonger fishwife
    fixer flapper flautist fledgling florist foe follower fool forefather foreigner foreman forerunner founder freak
    freeman freewheeler freshman friend fugitive fullback gadfly gagwriter gallant gambler gamin gangster gardener
    general generalist geneticist genie genius gentleman geographer geologist ghoul girl girlfriend giver gladiator
    glutton gnome god goddess goldsmith golfer goner gospeler gourmet governess governor graduate grammarian
    grandchild grandfather grandma grandmother grandparent granny grayback graybeard grocer groom grower grownup guard
    guardian guerrilla guest guide gunman gunner gunslinger guru guy gymnast gynecologist hack hacker halfback
    handyman hater hawker headmaster headsman healer hearer heir hellion helper herald heretic hero heroine
    herpetologist highness highwayman hijacker hillbilly historian hitter homesteader homosexual hood horseman hostess
    hotelman hotshot housebreaker householder housewife huckster hulk humanist humorist hunter hurler husband
    hypocrite idealist ideologist idiot idler ignoramus illustrator imbecile immigrant imp impressionist incarnation
    incompetent incubus individualist infant infantryman infielder informant inhabitant inmate inquisitor inspector
    instructor intellectual intermediary interne interpreter interviewer intruder invader invalid inventor
    investigator investor ironworker jackass janissary janitor jerk jeweler jimdandy jimhickey jockey joker journalist
    judge junior jurist juror kid kidnapper killer king knight laborer lackey lad lady laggard landlord landowner
    lasher lawman lawyer layman leader learner lecher lecturer lefty legatee legislator letterman liar liberal
    libertine librarian lieutenant lifter lightweight linebacker lineman linguist listener litigant logger
    longshoreman loon lord loser lover loyalist lucifer luminary lummox lunkhead lyricist machinist madam madman
    magician magistrate maid maiden mailman major maker malfeasant mama mamma man manager maniac manservant mantrap
    marine marksman marshal martyr masseur master mate matriarch matron mayor mechanic member mercenary mercer
    merchant mermaid messenger midshipman miner minister minor minstrel misanthrope misogynist miss missionary
    mistress mocker moderate modern mommy monarch moneymaker monk monologist monster monstrosity moralist mortician
    mother mourner mover moviegoer murderer muscleman muse musician mutant mutineer namesake naprapath national native
    naturopath navigator nazi neighbor nemesis nephew neurotic neutralist newcomer newsboy newsman newspaperman newton
    niece nigger nigra nobody noncom nonconformist nondriver notable novelist nun nurse nymph nymphomaniac observer
    occupant offender officer official offspring ogress oldster onlooker operagoer opponent orator orderly ordinary
    organizer orphan outcast outfielder outlaw outsider overachiever overnighter owner oyabun pagan painter pander
    papa paranoiac pardner parent parishioner parson participant partner passenger passerby pastor pathologist patient
    patriot patroller patrolman patron patronne peasant peddler peer pensioner perfectionist performer personage
    pessimist petitioner phantom pharmacist philosopher phony physician physicist pianist picket pilgrim pilot pimp
    pioneer pirate pistoleer pitcher pixie planner planter plasterer player playmate playwright plumber poet policeman
    politician pop pope porter portwatcher poseur positivist posseman potter practitioner preacher predecessor
    president prey prick priest primate prince prisoner private pro procurer producer professional professor promoter
    promulgator propagandist prophet proponent proprietor prosecutor prostitute protagonist protege prowler
    psychiatrist psychologist psychopath psychopomp publicist puke puncher pundit punk punster pupil pursued pursuer
    purveyor quack quaker quarterback questioner rabbi racist racketeer ragamuffin rajah rancher rapist rascal
    reactionary reader realist rebel receptionist recipient recluse recruit redcoat redheader referee refugee
    registrant regular relative religionist repairman reporter reprobate republican researcher resident retailer
    reveller reverend reviewer rhetorician rider rifleman rigger rival roarer robber rogue romantic roofer rookie
    roughneck rowdy ruffian ruler runner rustler safebreaker sage sailor saint salesgirl saleslady salesman satirist
    savage saver savior schizophrenic scholar scholastic schoolboy schoolgirl schoolmarm schoolmaster schoolmate
    scientist scoundrel scout sculptor seafarer seaman secessionist secretary secularist seeker seer selectman
    seminarian senator senior sentinel sentry sergeant servant settler sharer sheepman shepherd sheriff shopkeeper
    shopper shortstop signore singer sinner sipper sir sis sister skeptic skirmisher skunk slave sleeper sleepwalker
    slob slugger smuggler sniper socialist sociologist soldier soloist son songwriter soothsayer sophisticate
    sophomore soprano soul southpaw sovereign speaker specialist spectator spokesman sponsor sportsman sportswoman
    spouse sprinter spy squire stager starlet statesman statistician stepchild stepmother steward stiff stockbroker
    stockholder stoic storekeeper storyteller straggler stranger strategist student stupid stylist subjectivist
    subordinate suburbanite successor sucker sufferer suitor sultan superior supernatural supervisor supplier
    supporter surgeon surveyor survivor suspect swami swashbuckler swede sweetheart symbolist tackle tailback
    taxidriver taxpayer teacher teammate teamster tease technician teenager teetotaler telegrapher tenant terrorist
    theatregoer theologian theorist therapist thief thinker tiger tormentor toter tourist townsman trader tradesman
    tragedian trainman traitor tramp trapper traveler traveller treasurer troll trooper trumpeter trustee tumbler
    tutor twin twirler tyrant uncle underachiever undergraduate underling undertaker unfortunate urchin user valet
    vandal vaquero vendor vet veteran vicar victim victor viewer villager villain violinist virgin virtuoso visitor
    vocalist volunteer voter voyager wag waiter waitress wanderer ward warrior watcher watchmaker watchman
    watercolorist wearer westerner whale white whiz wholesaler whore widow widower wife wigmaker wildcatter windbag
    wingback wingman winner wisenheimer witch witness wizard woman woodcarver worker workman worshipper wrestler
    wretch writer yokel youngster youth zombie
    """.split()
)
"""Nouns of people."""

QUALITIES = frozenset(
    """
    abandoned abashed abbreviated abdominal aberrant abhorrent abiding abject ablated ablaze able abnormal abominable
    abounding aboveground abrupt absent absentminded absolute absorbed absorptive abstracted abstractive absurd
    abundant abused academic accelerated accelerating acceptable accepted accepting accidental accompanied
    accompanying accomplished accrued accumulated accurate accusative accusing accustomed aching acoustical acquainted
    acquired acrobatic activated active actual acute adamant adaptable adapted added addicted additional addlebrained
    addressed adept adequate adjacent adjectival adjoining adjusted admirable admissible adopted adrenal adroit
    adsorbed advanced advancing advantageous adventurous adverbial adverse advertised advisable aerated aerial aerobic
    aerodynamic aerosolized aesthetic affected affectionate afferent affianced affiliated affixed afflicted afire
    aflame aflare afloat aforesaid afraid african agape aged aggregate aggressive aghast agile agitated agricultural
    ahorseback ailing aimless airborne airless airy akin alarmed alert alfresco algerian alien alienated alive
    alkaline all alleged allied alligatored allocable allowable aloof altered alternate alveolar amazed amazing amber
    ambiguous ambitious ambivalent amenable amended american amiable amicable amiss amoral amorous amorphous ample
    amused amusing anaerobic analeptic analogous analytic analytical anastomotic anatomic anatomical ancestral ancient
    andean anemic anesthetized angelic anglican angry anguished angular anhydrous animallike animated annihilating
    annoyed annoying annual anomalous anomic anonymous another answering antagonistic antebellum anterior anti
    antibiotic antic anticipated antique antiseptic antithetical antithyroid antitrust anxious any apocalyptic
    apocryphal apologetic apostolic appalling apparent appealing applicable applied appointed appreciable appreciated
    appreciative approachable approaching appropriate approved apt aqueous arable arbitrary arboreal arched
    archeological arching architectural ardent arduous argive arguing argumentative aristocratic aristotelian armed
    armored aroused arranged arrogant arterial arteriolar artificial artistic arty ascending ascertainable ashamed
    ashen asleep aspiring assembled assertive assigned associated assorted assumed assured asteroidal astonished
    astonishing astounding astral astringent astronomical astute asymmetric asymptotic atheistic atheromatous athletic
    atmospheric atomic atomlike atrophic atrophied attached attained attempted attentive attired attractive
    attributable atypical audacious audible austere authentic authoritarian authoritative authorized automatic
    automotive autonomic available avenging average avowed awaited awake awakened aware awed awestruck awful awkward
    axial axiomatic babbling babelike bacterial bad baffling baggy baked balanced bald balding baleful balking balled
    ballooning bamboo banal bandaged barbaric barbed bare barefoot baronial baroque barren based bashful basic
    basophilic bated battered battleful bawdy beaded beady beaming bearded beardown beaten beautiful bedfast
    bedraggled beefy befuddled beguiling behavioral belated belgian believable belligerent beloved belowground bended
    bending beneficial benevolent bent bespectacled besplashed best bestial bestubbled betrothed better bewhiskered
    bewildered bewitched biblical big bigger biggest bilateral bilingual billion billowing bimolecular binomial
    biochemical biographical biological biomedical bipartisan biting bitter bittersweet bizarre black blackened bladed
    blanched bland blank blasphemous blasting blatant blazing bleached bleak bleary blessed blighted blind blinded
    blindfolded blinking blissful blistered blistering blithe bloated blockading blond bloodless bloodstained
    bloodsucking bloodthirsty bloody blown blue bluish blunt blurred blushing blustery boastful boeotian bogartian
    boisterous bold bonded bony booked booted bordering borderline bored boring born both bottomless botulinal
    bouffant bound bounded bounding boundless bovine bowed boxed boyish braced brackish braided brainy branched
    branded brash brassy brave brazen brazilian breaking breathless brief bright brilliant brindle brisk britannic
    british brittle broad brocaded broke broken bronchial bronchiolar bronzed brooding brotherly brown brownish
    bruised brushed brushy brutal bucolic budgetary built bulging bulky bullnecked bunched buoyant burdened
    bureaucratic buried burly burned burning burnt bursting bushwhacking bushy businesslike busted bustling busy
    buttoned buttressed buzzing cackly cadaverous cagey calculated calculating called callous calloused calm calming
    calorimetric canadian candid canonist canonized cantering capable capitalist capitalistic captivating cardinal
    carefree careful careless caressing careworn carnal carpeted cartesian carved carven casebook cassocked casual
    catapultian catastrophic catatonic categorized causal causative cautious ceaseless celestial celtic centenary
    centered central centralized ceramic cerebral certain certified challenging chambered changed changing chanted
    chantlike chaotic charged charitable charming chattering cheap cheerful cheery chemical cherished chestnut chic
    chief childish childlike chilling chilly chinese chinked chinless chipper chiseled chivalrous chockful choked
    choking choosy choreographic chosen christian chronic chunky churchgoing churchillian churchlike churning
    cinematic circular circulating circumspect civic civil civilian civilized clad clammy clamorous clandestine
    clanging clanking clannish classic classical classified classless clattering cleaned clear cleared clearheaded
    clerical clever clinched clinical clockwise clogged clogging clonic closed closing clothed clotted clouded cloudy
    clumsy cluttered coarse coarsened coastal coated coaxial coaxing cockeyed cocky coexistent cognate coherent
    cohesive cold collapsible collective collegiate colloidal colloquial colombian colonial colored colorful colorless
    colossal colour columned columnlike combatant combinable combined cometary comfortable comforted comforting comic
    coming commanding commendable commensurate commercial committed common commonplace commonsense communal
    communicative communist communistic compact comparable comparative compassionate compatible compelled compensatory
    competent competing competitive complementary complete completed complex complicated complimentary composed
    comprehensive compressed compromising compulsive concave concealed conceivable concentrated conceptual concerned
    concerted conciliating conciliatory concise concluding conclusive concordant concretistic concurrent condemnatory
    condemned condensed condescending conditional confederate confident confidential confiding confining confirmed
    conflicting confluent confused confusing congenital congested congestive congressional conjoined conjugal
    conjugated connected connecting connective conscientious conscious consecutive consequent conservative conserving
    considerable considerate considered consistent consolidated consoling consonantal conspicuous constant constrained
    constraining constricted constricting constructive consummated consumptive contemplative contemporary contemptible
    contemptuous contending contented contiguous continental continual continued continuing continuous contraband
    contractual contradictory contrary contrasting contributing contributory contrived controlled controversial
    convenient conventional convex convicted convinced convincing convivial convulsive cooccurring cooing cool cooled
    cooperative coordinated cordial corinthian corporate corporeal correlated corresponding corrosive corrugated
    corrupt cortical corticofugal cosmic costly countless countrywide countywide courageous courteous covered cowardly
    cowled cozy cracked crackling crafty craggy cranky craved craven crawling crazed crazy creaking creamy creased
    creative credible creditable creedal creeping crested crimson cringing crippled crippling crisp crisscrossed
    critical crocked crocketed crooked cropped crossed crotchety crowded crowned crowning crucial crude cruel crumbled
    crummy crumpled crunched crushed crushing crusted crying cryptic cuban cubist cuffed cultural cultured cumbersome
    cumulative curdling curious curled curling curly curricular cursed cursing cursory curtained curved curving
    custodial customary cute cylindrical cynical dabbled dainty damaging damn damned damp dangerous danish dank dapper
    dappled dark darkening darned dashing dated dauntless dazed dazzling dead deadened deadly deaf deafening dear
    deathlike deathly debilitating decadent decayed deceased decent deceptive decisive declarative declared declining
    decorative decreasing dedicated deducted deductible deductive deep defective defensible defensive defiant
    deficient definable defined definite definitive deflated deformational deformed dejected delayed deliberate
    delicate delicious delighted delightful demanding democratic demonstrable demonstrated demure dense dental denuded
    departed departing departmental dependable dependent depleted deplorable deposed deprecating deprecatory depressed
    depressing deranged derisive derived descending descriptive desensitized deserted deserved deserving designed
    desirable desired desolate despairing desperate despicable despised despondent destroyed destructive desultory
    detachable detached detailed detectable detected determinable determinate determined determining devastating
    developed developing developmental deviant devilish devious devoted devotional devout dexterous dextrous
    diachronic diagnostic diagonal diaphyseal diatomic dictated dietary different difficult diffident diffused
    diffusing digestible digestive dignified dilapidated diligent dim dimensional dimensioning diminished diminishing
    diminutive dingy diplomatic dipylon directed directing directional dirty disabled disabling disappointed
    disappointing disarming disastrous discarded discernable discernible discerning disciplined disclosing
    disconcerted disconcerting discontented discorporate discouraged discouraging discourteous discovered discrete
    discretionary disdainful diseased disembodied disfigured disguised disgusted disgusting disheartened disheartening
    disheveled dishonest disinterested disjointed dismal dismayed dismaying dismounted disobedient disordered
    disorderly disorganized disparate dispassionate dispersed displeased dispossessed disputable disqualified
    disruptive dissatisfied disseminating dissimilar dissolved distal distant distinct distinctive distinguished
    distortable distorted distraught distressed distressing distributive disturbed disturbing divergent diverse
    diversified divided divine divisive divorced dizzy docile docked doctrinaire doctrinal dogged dogging doglike
    dogmatic doleful domestic dominant dominated dominating domineering done doomed doped dormant dosed dotted
    doubtful downcast downed downhill downtown downtrodden downward drab drafty dragging dramatic draped drastic
    draughty drawn dreadful dreamed dreamlike dreamy dreary drenched dressed dressy dried drifting drilled dripping
    driven driving drizzling drowsy drugged drugless drunk drunken dual dubious due dull dulled dumb dumfounded dumped
    duplicable durable dusky dusty dutch dwindling dying dynamic each eager eared earliest early earned earnest
    earsplitting earthbound earthlike earthshaking earthy eastern easy eatable eaten ebullient eccentric eclectic
    economic economical ecstatic edematous edentulous edged edgy edifying educated educational effective efficacious
    efficient effortless egocentric eight eighteen eighteenth eighth eighty elaborate elapsed elastic elderly eldest
    elected electoral electric electrical electrifying electronic electrostatic elegant elemental elementary elevated
    eleven eleventh elfin eligible elongated eloquent elusive emaciated emancipated embarrassed embarrassing embedded
    emblematic embodied emboldened embowered emergent emerging emeritus eminent emitting emotional emphatic
    emphysematous empirical employed empty emulsified enabling enameled enchained enchanted endearing endless
    endothelial endowed enduring energetic enervating enforceable enforced engaged english engraved engrossed
    engrossing enigmatic enjoyable enlarged enlightened enormous enraged enrolled ensuing entangled enterprising
    entertaining enthusiastic entire entitled enveloping envious environmental enwrapped enzymatic eosinophilic
    ephemeral epileptic epiphyseal epistolatory equal equipotent equipped equitable equivocal ergotropic eroded erotic
    erratic erroneous ersatz erudite erythroid escaped esoteric essential established esthetic estimated estranged
    estranging eternal ethereal ethical ethnic etymological eugenic euphoric eurasian european evacuated evaluative
    evangelical evasive eventual everlasting every everyday evident evidential evolutionary exact exaggerated exalted
    exasperated exasperating excellent exceptional excessive excitatory excited exciting exclusive excruciating exempt
    exhausted exhausting exhaustive exhilarating existent existential existing exotic expanded expanding expectable
    expectant expected expedient expendable expended expensive experienced experiential experimental explanatory
    explicit exploding exploratory explosive exposed expository expressed expressible expressive expropriated
    exquisite extant extended extensive external extinguished extra extralegal extramarital extraneous extraordinary
    extrapolated extravagant extreme exuberant exultant eyed eyelike fabled fabulous faced facetious facilitatory
    factual faded faery faint fair faithful fake fallen falling fallow false famed familiar famous fanciful fantastic
    faraway fascinated fascinating fascist fashionable fastened fastidious fat fatal fateful fatigued fattening fatty
    favorable favored fearful fearless feasible feathered featured featureless fecund federal feeble feline felt
    feminine ferocious ferromagnetic fertile fertilized fervent festering festive fetching fetid feudal feverish few
    fewer fibrocalcific fictional fictive fiendish fierce fiery fifteen fifteenth fifth fiftieth fifty figurative
    filled filmed filthy final financed financial fine finest fingered finicky finished finite firm first firsthand
    fiscal fitting five fixed flailing flaming flaring flashy flat flattened flawless flecked fledgling fleeing fleet
    fleeting fleshy flexible flimsy floating flooded floral florid flourishing flowing fluent fluffy fluorescent
    flushed fluttering flying foamy focal folded folksy follicular following fond foolhardy fooling foolish foolproof
    footloose foppish forbidden forced forceful forceless foregoing foreign foremost forensic foreseeable forgetful
    forgotten forked forlorn formal formalized formed former formidable forthright fortified fortunate forty foul
    fouled four fourfold fourteen fourteenth fourth fractional fragile fragmentary fragmented fragrant frail framed
    frank frantic frayed free freed freehand freelance freewheeling frenzied frequent fresh freudian friable fried
    friendly frightened frightening frightful frigid fringed frivolous frontal frostbitten frothing frowzled frozen
    fruitful fruitless frustrated frustrating fueled fugal full fumbling functional fundamental fungal funny furious
    furnished furry furtive fusiform fussy futile fuzzed fuzzy gabbling gaelic gainful galling galloping galvanic
    gaping garbed garbled gaseous gathered gauche gaudy gaunt gauntleted general generalized generous genetic genial
    gentile gentle gentlemanly genuine geographic geographical geological geometric geometrical germinal gerundial
    gesticulating ghastly ghostlike ghostly gibelike gifted gigantic gilded gilt girlish given glad glamorous glaring
    glassless glassy glazed gleaming gleeful glinting glistening glittering global glomerular gloomy glorified
    glorious gloved glowering glowing glued glum goddam goddamn goddamned godforsaken godless godlike golden gone good
    gorgeous gory gossamer governing governmental gowned graceful gracious graded gradual graduated grammatic
    grammatical grand grandiose granted granular granulocytic graphic graphical grassroots grateful gratified
    gratifying gratuitous gravid gravitational gray grayed greasy great greater greatest grecian greedy greek green
    greening gregarious grey grievous grim grimy gritty grizzled groggy groomed grooved gross grotesque groundless
    growing grown gruesome gruff grunting guatemalan gubernatorial guided guileless guilty gullible gummy guttural
    gymnastic habitable habitual hackneyed haggard haired hairless hairy hallowed halted handicapped handled handless
    handmade handsome handwoven handwritten handy hapless happy harassed hard hardened hardworking hardy harmful
    harmless harmonic harmonious harsh hasty hated hateful hatless haughty haunted haunting hazel hazy headed headless
    headstrong healthful healthy heard hearted heartening hearty heated heavenly heaving heavy heavyweight hebephrenic
    hebraic hectic heedless hefty hegelian held hellenic helpful helpless hemispherical hemolytic henpecked heraldic
    herculean hermetic heroic hesitating heterogeneous heterozygous hidden hideous high higher highest hijacking hilar
    hilarious hired historic historical hitless hoarse homegrown homely homemade homeric homesick homicidal
    homogeneous homozygous honest honorable honored hooked hopeful hopeless horizontal horrible horrid horrified
    horrifying hospitable hostile hot hourly hoydenish huddled hued huge human humane humanistic humanitarian humble
    humiliating humorous hundred hung hungarian hungry hunted hurling hurried hurrying husky hyaline hydrophilic
    hydrophobic hydrous hyperbolic hyperemic hyperfine hypertrophied hyphenated hypoactive hypophyseal hypothalamic
    hypothetical hysterical iced icy ideal idealized identical identifiable identified idiomatic idiosyncratic idiotic
    idle idolized idyllic ignorant ill illegal illegitimate illicit illiterate illuminating illusionary illusory
    illustrated illustrative illustrious imaginary imaginative imagined imbued imitative immaculate immaterial
    immature immediate immense imminent immoral immortal impacted impaired impartial impassable impassioned impatient
    impeccable impelled impending imperative imperfect imperial imperious impersonal impervious impetuous impious
    implacable implicated implicit implied implike imploring important imposing impossible impotent impractical
    imprecise impregnable impressive improbable improved improvised impudent inaccurate inactive inadequate
    inadvisable inane inanimate inappropriate inaudible inaugural inboard incalculable incandescent incapable incensed
    incertain incessant incidental incisive inclined inclusive incoherent incoming incompatible incomplete
    inconceivable inconsistent inconvenient incorrect increased increasing incredible incurable indebted indecent
    indefatigable indefensible indefinable indefinite indelible indelicate independent indescribable indeterminate
    indifferent indignant indirect indispensable indistinct indolent indoor indubitable induced indulgent industrial
    industrious ineffable ineligible inept inert inescapable inevitable inexcusable inexhaustible inexorable
    inexpensive inexperienced inexplicable inexpressible inextricable infallible infamous infantile infected
    infectious infective inferential inferior infernal infertile infested infinite infirm inflamed inflammatory
    inflated inflected inflexible influent influential informal informed infrared infrequent infuriating ingenious
    inglorious inhabited inherent inhibited inhibitory inhospitable inhuman inhumane initial injured innate inner
    innocent innumerable inoperable inorganic inquiring inquisitive insane inscribed inscrutable insensitive
    inseparable insignificant insistent insolent insoluble inspirational inspired inspiring instantaneous instinctive
    institutional instructional instructive instrumental insubstantial insufficient insulting insuperable insured
    intact integral integrated intellectual intelligent intelligible intended intense intensifying intensive intent
    intentional inter interested interesting interfaith interim interlobular interlocking intermediate intermeshed
    interminable intermittent internal international interpersonal interpretable interrelated intersecting
    interspecies interstate interstellar interstitial intertwined interwoven intimal intimate intolerable intra
    intractable intricate intrinsic introductory introjected introspective intrusive intuitive invaluable invariable
    invariant inventive inverted investigative inveterate invincible inviolate invisible inviting involuntary involved
    invulnerable inward iodinated iodinating ionic ionized irish irksome ironic ironical ironlike ironshod irrational
    irreducible irregular irrelevant irremediable irreparable irresistible irresolute irresponsible irreversible
    irrevocable irritable irritating ish isolated isolationist isothermal isotonic isotopic isotropic italian
    jacksonian jaded jagged jammed jangling japanese jarring jaunty jazzy jealous jeffersonian jerky jetting jeweled
    jewish jingling jocose jocular joined joint jolly jolted jouncing jovial joyous jubilant judicial juicy jumbled
    jumpy jungian jutting juvenile keen keyed khaki kidnaped killable kindled kindly kindred kinesthetic kinetic
    kittenish kneeling knifelike knightly knotted knotty knowing knowledgeable known kosher labeled labile laborsaving
    laced lacking lactating lacy laden ladened ladylike laid lamblike landlocked landscaped languid lanky lao lapsed
    large larger largest larval last lasting latched late latent latest latter lavender lawless lax lazy leaded leaden
    leading leaning learned leathered leavened led leering left legal legendary legged leggy legislative legitimate
    lengthening lengthy lessened lesser lethal levelheaded lewd lexical liable liberated licensed licked lifeless
    lifelike lifelong lifted lighted lighthearted likely limited limiting limitless limp linear lined lingering
    lingual linguistic lipped liquid listed listening listless lit literal literary literate lithe littered little
    livable lively livid living loaded loathsome lobular local located locked lofty logical logistic lonely long
    longstanding looking loose looted lordly lost loud lousy lovely loving low lower lowered lowering lowly loyal
    lucid lucky ludicrous lugubrious lukewarm lumbar luminescent luminous lumpish lunar lunatic lurid lurking luscious
    lush lusty luxurious lyrical macabre machinelike mad maddened maddening made magical magnetic magnificent
    magnified main maintained majestic major makeshift maladroit malformed malign malposed mammalian mammoth mandatory
    mangled maniacal manic maniclike manned mantic manufactured many marbleized marching marginal marine marital
    marked marketable married martian marvelous marxist masculine massive masted masterly matched matching maternal
    mathematical matted mature mauve maximal maximum meager meandering meaningful meaningless measurable measured
    meaty mechanical mechanistic mechanized meddling median medical medieval meditative meek melodic melodious
    melodramatic memorable menacing mendacious menial mental merciful merciless mercurial meritorious merry mesenteric
    messy metabolic metallic metaphysical meteoritic methodical methodist metropolitan microbial microscopic
    microsomal mid midway midweek midwestern mighty migratory mild militant military million mimetic mincing minded
    mindful mindless mineralized minimal minimized minimum ministerial minoan minor miraculous misbranded
    miscellaneous mischievous miserable misguided misleading misplaced misrelated missing mistaken misty misused
    mitral mixed mobile moblike mocking modal modeled moderate modern modernized modest modified moist molal molecular
    molten momentary momentous monastic monaural monkish mononuclear monophonic monotone monotonous monstrous monthly
    monumental moonlit moral moralistic moroccan morose morphemic morphologic mortal motional motionless motivated
    motivating mottled mountainous mounted mournful mousy moving muddied muddleheaded muddy muffled multi multilateral
    multiple multiplied multitudinous mum mundane municipal murdered murky muscular musical mustached mutational mute
    muted mutual mycenaean myeloid myocardial myriad mysterious mystic mystical mythic mythological nagging naive
    naked named nameless napoleonic narrow narrowed nasal nascent nasty natal national nationalistic nationwide native
    natural naturalized nauseated nautical naval neanderthal near nearby nearer nearest nearsighted neat nebulous
    necessary necrotic needed needless negative neglected negligent negligible negroid neighboring neo neocortical
    neoliberal nerveless nervous netlike nettlesome neurological neuromuscular neuronal neurotic neutral neutralized
    new newborn newest newtonian next nibbed nice nighted nightmarish nihilistic nilpotent nimble nine nineteen
    nineteenth ninety ninth noble nociceptive nocturnal nodular noisy nominal non nonassertive nonchalant nondescript
    nonenzymatic nonequivalent nonexistent nonfunctional nonionic nonlinguistic nonmetallic nonobservant nonpartisan
    nonparty nonpolitical nonproductive nonresident nonspecific nonverbal nonvolatile normal northerly northern nosed
    nostalgic notable noted noteworthy noticeable notorious nourished nubile nuclear null numb numbing numerical
    numerous numinous nutritional nutritive oaken obdurate obedient objectionable obligated obligational obliged
    oblique obliterating oblivious obnoxious obscene obsequious observable observant observational observed obsessed
    obsolescent obtainable obvious occasional occipital occluded occlusive occupational occupied ocular odd odious
    offbeat ohmic oiled oily okay old older oldest oleophilic oleophobic olive olympic ominous omniscient oncoming one
    onetime onward opalescent opaque opened openmouthed operatic operating operational operative opinionated
    opportunistic opposed opposing opposite oppressed optical optimal optimistic optimum opulent oral oratorical
    orbital orchestral ordered orderly ordinary organic organized oriental oriented original ornamented ornate ornery
    orthodox orthographic orthopedic osseous ostentatious other outclassed outdated outdoor outer outgoing outlined
    outlying outmoded outraged outrageous outspoken outstanding outward oval overactive overall overbearing
    overconfident overcurious overdone overgrown overhand overhanging overheated overlapping overloaded overlooked
    overpriced overriding oversized overt overturned overvaliant overweight overwhelmed overwhelming owing own owned
    oxidised packed padded paid painful painless painted paired pale paleocortical paling pallid palpable pampered
    panicked panoramic panting papal papery papillary paradoxical paramagnetic parametric paramount paranoid parched
    pardonable parental parisian parked parliamentary parochial parrotlike parted partial particular particulate
    partisan passionate passive pasted pastel pastelike pastoral pasty patched paternalistic pathetic pathless
    pathogenic pathologic pathological patriarchal patriotic patristic patronizing paved payable peaceable peaceful
    peaked peaky pearly peculiar pedagogical pedantic peeling peevish pelvic penciled pending penetrating pensive
    penultimate peopled peptizing perambulating perceived perceptible perceptive perceptual perched percussive
    peremptory perennial perfect perfumed perfunctory perilous periodic peripheral perky permanent permeated perpetual
    perplexed perplexing persistent personal personalized perspiring persuasive pert pertinent pervading pervasive
    perverse pessimistic pestered pestering pestilential petite petticoated philanthropic philharmonic philological
    philosophic philosophical phonemic phonetic phonic phonologic phony photographic physical physiologic
    physiological pianistic pictorial pictured picturesque piezoelectric pigheaded pilot pinched pink piratical
    pitched piteous pithy pitiable pitiful pitiless pitying placating placid plagued plain planar planetary planned
    planted plastered platitudinous platonic plausible playable played playful pleading pleasant pleased pleasing
    plentiful pleural pliant plump plumping pluralistic plush poetic poignant pointed pointing poised polar polemical
    polished polite politic political polluted polytonal pomaded pompous ponderous poor popular populated populous
    porous portable portentous positive possessed possessive possible posterior posthumous postponed postwar potent
    potential powdered powdery powered powerful powerless practicable practical practiced practicing practised
    pragmatic prattling pre prearranged precarious precast preceding precious precise precocious preconceived
    precooked precooled predetermined predictable predicted predictive predigested predisposed preeminent preexistent
    preferable preferential preferred pregnant prehistoric prejudiced prejudicial preliminary preliterate premonitory
    preoccupied prepackaged preparative preparatory prepared prepositional preposterous prepubescent prepupal
    prescribed presentable preserved presidential pressing presumed pretended pretrial prevailing prevalent preventive
    previous prewar priced priceless prickling prickly primary prime primed primeval primitive principal printable
    printed prior private privileged prizewinning pro probable procedural processed proclaimed procreative prodigal
    prodigious produced productive profane professional proficient profitable profound profuse progressive projected
    prolific prolonged prominent promised promising promotional prone pronounced proper prophetic propitious
    proportional proportionate proposed prosodic prospective prosperous protecting protective proteolytic protestant
    protesting proto prototypical proud proved proverbial providential provincial provisional provocative proximal
    proximate prurient pseudo psychiatric psychic psychical psychological psychopathic psychotic pubescent public
    publicized published puckered puckish puffed pulled pulmonary pulsating pulsed pulseless pulsing pulverized
    punctured pungent punishable punitive puny puppyish pure purified purple purposeful pursuant pursuing puzzled
    puzzling pyknotic quaint quaking qualified qualitative quantitative quarrelsome quarterly quasi quavering queer
    querulous questionable quick quicksilver quiescent quiet quilted quivering quixotic racial racy radial radiant
    radical radioactive raftered ragged raised raising rampant random ranging rangy ranked raped rapid rare rarified
    rasping ratable rational rationed raucous raving raw readable ready real realistic reasonable reassured reassuring
    rebelling rebellious reborn rebuilt receding recent receptive reciprocal reckless reclaimed recognizable
    recognized recommended reconciling reconstructed recorded recoverable recreational rectangular recurrent red
    reddish redheaded redoubled redoubtable reduced redundant reeking refined reflective reformed refractory refreshed
    refreshing refrigerated regal regardant regarding regenerating regimental regional regular regulated regulatory
    rejected related relative relativistic relaxed relaxing released relentless relevant reliable relieved religious
    reluctant remaining remarkable remedial remembered remorseful remorseless remote removed remunerative rending
    renewed renewing repaired repayable repeated repentant repetitious repetitive reported reposeful reprehensible
    repressed repressive reproducible repulsive reputable reputed required researchable resentful residential residual
    resiny resistant resistive resolute resolved resonant resounding respectable respected respectful respective
    respiratory resplendent responsible restive restless restrained restricted restricting restrictive resublimed
    resultant resulting retained retaliatory retarded retentive reticulate retinal retired retiring retreating
    retrogressive revealing revered reversible revised revolutionary rewarding rhythmic rhythmical rich rickety ridden
    riddled ridiculous righteous rightful rigid rigorous rimless riotous ripe ripping rising risky roasted robust
    rocklike rocky roiling rolling romantic rosy rotary rotated rotating rotten rotting rough roughhewn roundabout
    rounded rousing rousseauan royal rubberized rubberlike rubbery rudderless ruddy rude rudimentary ruffled rugged
    ruined ruinous ruled runaway running rural russian rusted rustic rusty ruthless rutted sacred sad sadistic safe
    sagacious sagging salable salacious salient salivary sallow salty salubrious salutary same sanctified sandy sane
    sanguineous sapphire sarcastic sarcolemmal sardonic satanic satiric satirical satisfactory satisfied satisfying
    saturated savage saved savory scaled scalloped scampering scandinavian scant scanty scarecrowish scared scarred
    scathing scattered scavenging scenic scented scheduled schematic schizophrenic scholarly scholastic schoolgirlish
    scientific sclerotic scolding scorched scorching scoreless scornful scoured scraggly scrambled scratched
    scratching scratchy scrawled scrawny screaming screechy scriptural sculptural sculptured scurrying seafaring
    searching seasonal seated secluded second secondary secondhand secret sectioned secular secularized secured sedate
    sedentary seductive seeking seeming seen seeping seething segmental segregated seismic selected selective selfish
    semantic semi semiempirical semiliterate semiprecious semipublic semiskilled senatorial senile senior sensational
    senseless sensible sensitive sensory sensual sensuous sentient sentimental separable separated septic sequential
    serene serial serious serological serviceable servile settled seven seventeen seventeenth seventh seventy several
    severe sexual sexy shabby shackled shaded shadowed shadowy shaggy shaken shaking shaky shallow shameful shaped
    shapeless shapely shared sharp shattered shattering shaved shaven sheeplike sheer sheltered shielded shifting
    shimmering shining shiny shipshape shivery shocked shocking shod short shortened shortsighted shouldered showy
    shrewd shrewish shrieked shrill shrilling shriveled shuddering shy sick sickish sickly sidelong signed significant
    silenced silent silky silly silver silvery similar simple simplex simplified simplistic simulated simultaneous
    sincere sinewy sinful single singular sinister sintered sinuous sinusoidal situated six sixteen sixteenth sixth
    sixty sizable sized sizzling skeletal skeptical skilled skillful skinny slack slanted slanting slashed slashing
    sleek sleeping sleepy slender sliding slight slightest slim slippered slippery slipping slivery sloping sloppy
    slovenly slow sluggish sluicing slurred sly small smaller smallest smallish smart smashed smeared smiling smitten
    smoldering smooth smothered smothering smudged smug snappy snobbish snug snuggled soaked soaking soaring sober
    sobering social socialist socialistic socialized societal socioeconomic sociological sodden soft softened soiled
    solar sole soled solemn solid solitary soluble solved somatic somber sombre some somnolent sonorous sooty
    sophisticated sopping sorbed sordid sore sorrel sorrowful sorry sought sounding soundproof southbound southeastern
    southern sovereign soviet spaced spacious sparkling sparse spasmodic spatial special specialized specific
    specified speckled spectacular spectral specular speculative speedy spellbinding spellbound spherical spic spidery
    spiked spineless spirited spiritual spiteful splashed splattered splendid splintered splintery splitting
    spluttering spoiled spoken spongy spontaneous sporadic sporting spotless sprawled spreading sprightly squalling
    squared squashed squeaky stabbed stabilized stabilizing stable staccato stacked staggering stagnant stained stale
    stalked stalking staminate stammering standardized stark startled startling starved starving stately statesmanlike
    static statistical statutory staunch steadied steady stealthy steamed steaming steep stellar stemmed stentorian
    stepwise stereophonic stereotyped sterile stern sternal sticking sticky stiff stiffened stilted stimulating
    stinging stinking stocky stoical stolid stooped storied stormy stout straggling straight strained straitlaced
    stranded strange strangled strategic stratified streaked streaming streamlined strenuous stressed stretched strewn
    stricken strict striking stringy striped strong structural structured struggling strung stubborn studded studious
    stuffed stuffy stumbling stung stunned stunning stupefying stupendous stupid sturdy stylistic stylized suave
    subconscious subdued subgross subhuman subjective sublime subliterary submerged submissive subordinator subsequent
    subservient subsidized substantial substantive subsurface subtle suburban suburbanized succeeding successful
    successive such sudden sufficient suffocating suffused suggested suggestive suitable suited sullen sultry
    sumptuous sunbaked sunburnt sundry sung sunken sunny sunshiny sunstruck suntanned super superb supercilious
    superficial superimposed superior supernatant supernatural supersonic superstitious supine supplemental
    supplementary supporting supportive supposed supreme sure surfeited surging surly surmounted surprised surprising
    surrounded surrounding surviving susceptible suspended suspicious swaggering swallowed swamped swarming swart
    swarthy swaybacked swaying sweating sweaty swedish sweeping sweet swelled sweltering swift swinging swingy
    swirling swishing swollen sworn symbolic symmetric symmetrical sympathetic symphonic symptomatic synchronous
    synergistic synonymous syntactic synthetic syrian syrupy systematic taboo tactile tactual tagged tailored taken
    talented talismanic talkative talky tall tangential tangible tangled tanned tantalizing taped tapered tapering
    tart tasteful tattered taunting taut tawdry tawny taxable taxing taxpaying technical technological tedious teen
    teenage teensy telegraphic telling telltale temporal temporary ten tenable tender tenebrous tensional tensionless
    tentative tenth tenuous tepid terminal terrestrial terrible terrific terrified terrifying territorial terse tested
    teutonic textured theatrical theistic thematic theological theoretical therapeutic thermal thermodynamic
    thermometric thermostated thick thickened thickening thickspread thieving thin third thirsty thirteen thirteenth
    thirtieth thirty thoriated thorough thoroughgoing thoughtful thoughtless threadbare threatened threatening three
    thrifty thrillful thrilling thriving thrombosed thronged thudding thundering thunderous thyroidal thyrotoxic tied
    tight tightened tiled tilled tilted timbered timed timely timeworn timid tingling tinsel tinted tiny tipped tipsy
    tired tireless tiresome tiring titanic titillating titled tittering toiling tokenish tolerable tolerant tonal
    toned tongued topical topnotch topographical topped toppling tormented torn torpid tortuous tortured torturing
    total totalistic totalitarian totemic tottering touched touching tough touring tousled toxic traceable traditional
    tragic tragicomic trained traitorous tramping trampled tranquil trans transcendent transcultural transformed
    transitional translucent transmissible transmitted transparent transpiring transverse trapped traveled traveling
    treacherous treasured treated treble trembling tremendous triangular tribal trichrome tricolor trigonal trite
    triumphant trivial trophotropic tropical troubled troublesome truculent true trusted trustworthy truthful trying
    tubular tumbling tumultuous tuned tuneful turbulent turkish turned tuxedoed tweedy twelfth twelve twentieth twenty
    twisted twisting two twofold twoscore typical typographic ubiquitous ugly ulcerated ultimate ultra ultramodern
    ultrasonic unabated unable unacceptable unaccompanied unaccountable unachievable unadjusted unaffected unafraid
    unaided unalterable unambiguous unanimous unanswered unarmed unasked unassisted unasterisked unattached
    unattractive unauthentic unauthorized unavailable unavailing unavoidable unaware unbearable unbelievable unbidden
    unborn unbounded unbreakable unbroken unbuttoned uncanny uncaused uncertain uncertified unchangeable unchanged
    uncharged uncheckable unclaimed unclean unclouded uncombable uncomfortable uncommon unconcerned unconditional
    unconditioned unconnected unconquerable unconquered unconscious unconvincing uncooperative uncousinly uncritical
    undamaged undaunted undeclared undeniable undepicted under undercover undereducated underground underhanded
    underlying undersea understood underwater underway undesirable undeveloped undigested undiluted undiminished
    undisguised undisputed undisturbed undone undrinkable undue uneasy uneconomical unemployed unending unendurable
    unerring uneven unexpected unexplainable unexplained unexplored unfair unfaithful unfaltering unfamiliar
    unfastened unfavorable unfertile unfertilized unfettered unfit unfitting unfixed unforeseen unforgettable
    unfortunate unfrosted unfrozen ungainly ungodly ungrateful unguided unhappy unhealthy unheated unheeded unheeding
    unholy unhurried unhurt unified uniformed unilateral unimaginable unimaginative unimpaired unimpassioned
    unimpeachable unimportant unimposing unimpressed unimpressive unimproved uninitiated uninjectable unintelligent
    unintended uninterrupted uninvited uninvolved unique united univalent universal unjust unkind unknown unlawful
    unlike unlikely unlimited unlined unliterary unloaded unlocked unlovely unlucky unmalicious unmarried unmated
    unmeritorious unmistakable unmixed unmolested unmoved unnatural unnecessary unneeded unnoticed unnourished
    unnumbered unobtainable unoccupied unofficial unopposed unorthodox unpaid unpaintable unpaired unparalleled
    unpatriotic unpaved unperformed unpicturesque unpleasant unplowed unplumbed unpopular unprecedented unpredictable
    unprepared unpretentious unproblematic unprocurable unpromising unprotected unprotesting unpublished unpunished
    unqualified unready unreal unrealistic unreasoning unrecognized unredeemed unreeling unreflective unregretting
    unrelated unreleased unreliable unremarkable unrequited unresponsive unrestricted unrevealing unruly unsaid
    unsaturated unscathed unscientific unscrupulous unseeing unseen unselfish unservile unsettled unshakable
    unsharpened unshaved unshaven unshielded unsigned unsloped unsmiling unsold unsolved unspeakable unspoken unstable
    unstained unstilted unstressed unstructured unstrung unsuccessful unsuitable unsuited unsung unsympathetic
    untellable untenable untested unthematic unthinking untold untouched untoward untraditional untrammeled untried
    untrue unused unusual unvarying unventilated unwanted unwarranted unwavering unwed unwelcome unwilling unwise
    unwitting unwomanly unworn unworthy unwrinkled unwritten upbeat upcoming upland uplifted upper uppermost upraised
    upright urban urbanized urgent urinary usable useable used useful useless usual utilitarian utmost utopian vacant
    vacuolated vague vain valiant valid valuable valued valueless vanished vanishing variable varied variegated
    various varying vascular vast vehement veiled veined velvety venerable verbal veridical veritable vermilion vernal
    versatile vertebral vertical vesicular veterinary viable vibrant vibrionic vicarious vicious victorian viennese
    vigorous vile villainous vindictive violent virile virtual virtuous virulent visceral viscoelastic viselike
    visible visiting visored visual vital vivacious vivid vocal vocalic vocational vociferous voiced void volatile
    voltaic volumetric voluminous voluntary voluptuous votive vulgar vulnerable vulpine wacky wailful wainscoted
    wakeful walking walled walloping wan wandering warlike warm warmed warming warped wary washed wasted wasteful
    watchful waterproof watery waving wavy waxed waxen waxlike wayward weak weakened wealthy wearied wearisome weary
    wearying wee weekly weighted weird welcoming western wet wheezing whining whirling whiskered white whitewashed
    whole wholesome wicked wide widespread widowed wifely wild willful willing wilsonian wily windblown winding windy
    winless winning wintry wired wiry wise withered withering witty wobbling wobbly woeful wolflike wonderful
    wonderworking wondrous wooded wooden woolly wordy workable working workmanlike worldly worldwide worn worried
    worse worshiping worst worth worthless worthwhile worthy wounded woven wraithlike wrapped wrathful wreathed
    wrenching wretched wrinkled writhed writhing written wrong wry yawning yearly yelled yelling yellow yielding
    yonder young younger youngish youthful zodiacal
    """.split()
)
"""Adjectives before all."""

COMMANDS = frozenset(
    """
    bay bill box brook brown buck chance chase chip cook cross dawn don father field garden grace grant hope house
    hunt letter long major mar mark mother number page park pat picture place poll pool potter price print rein rob
    scout shepherd skip spring stone storm sue swan title wade will win winter
    """.split()
)
"""Names that are verbs too: what somebody is told to do."""

VERBS = frozenset(
    """
    abandon abet abhor abide abolish abound abridge abrogate absorb abstain abuse accede accelerate accentuate accept
    acclaim acclimatize accommodate accompany accomplish accord accost accredit accrue acculturate accumulate accuse
    accustom ache achieve acknowledge acquaint acquiesce acquire acquit activate actuate adapt add address adhere
    adjoin adjourn adjust administer admire admit admix admonish adopt adore adorn adsorb advance advertise advise
    advocate aerosolize affect affirm affix afford agglomerate aggravate agitate agree aid aim alienate alight align
    allege alleviate allocate allot allow alphabetize alter amass amaze amble amend amplify amputate amuse analyse
    analyze anchor animize annihilate announce annoy answer antagonise antagonize anticipate apologize appear appease
    append applaud apply appoint apportion appraise appreciate apprehend approach approve approximate arbitrate
    archaize argue arise arouse arraign arrange arrest arrive arrogate articulate ascend ascertain ascribe ask aspire
    assail assemble assert assess assign assimilate assist associate assume assure astonish astound atone attach
    attack attain attempt attend attest attract attribute attune audition augment augur authenticate authorize
    automate avail avenge avert avoid await awaken babble backstitch badger baffle bake balk ban bandy bang banish
    baptize barbecue base bask baste bat bathe batter bawl bear beat beautify beckon become bedamn befall befit befog
    befriend befuddle beg beget begin beguile behave behead behold behoove belabor belie believe bellow belong bemoan
    bend berate beseech beset besiege besmirch bespeak bestow bet bethink betray bevel bewail beware bewilder bewitch
    bicker bid bide bilk billow bind bite blab blacken blame blanch blaspheme blast bleat bleed blend bless blink
    blister bloom blubber blurt blush boast bode bogey boggle boil bolster boo boom boomerang boost borrow bother
    bounce bow boycott brace brag brandish breach break breathe brighten bring broaden broil browbeat bruise bruit
    brush buck buckle budge buffet build bullshit bump burgeon burn burnish burst bury bushwhack bust bustle butcher
    butt buy buzz bypass cackle calcify calculate calibrate call calumniate camouflage can cancel canonize canvass
    caper capitalize capitulate captivate capture care careen caress caricature carry carve cascade cast castigate
    catapult catch catechize categorize cater caucus cause cavort caw cease celebrate centralize centrifuge cerebrate
    certify chafe chaff challenge chandelle change chant characterize charge chase chat chatter cheat check cherish
    chew chide chirp chivy choke choose chop choreograph chortle chronicle chuckle chuff chug churn circulate
    circumscribe cite citrate claim clamber clamor clamp clang clank clap clarify clasp classify clatter cleanse
    cleave clench click climb clinch cling clink clobber clog clomp clothe cluck clutch coagulate coalesce coax cock
    coddle codify coerce coexist cohere coil coincide collaborate collapse collate collect colonize combine come
    commandeer commemorate commence commend commiserate commit communicate communize commute compare compel compensate
    compete compile complain complicate comply compose compound comprehend compress comprise compute conceal concede
    conceive concentrate concern conciliate conclude concoct concur condemn condense condone conduct confer confess
    confide confine confirm confiscate conform confound confront confuse congeal congratulate congregate conjoin
    connect connote conquer conscript conserve consider consign consist console consolidate consort conspire
    constitute constrict construct construe consult consume consummate contain contaminate contemplate contend
    continue contradict contribute contrive convene converge converse convert convey convict convince convulse cook
    cooperate coordinate cope correct correlate correspond corroborate corrode cosponsor cough count counteract cover
    covet cower crack crackle cram crane crave crawl creak crease create creep cremate cringe cripple crisscross
    criticise criticize croak crochet croon cross crouch crow crucify cruise crumble crumple crush cry crystallize
    cuddle culminate cultivate cure curl curse curtail cushion cut dab dabble dampen dance dangle dare darken darn
    dart dash daunt daydream dazzle deaden deal debilitate deceive decelerate decentralize decertify decide declaim
    declare decline decompose decorate decrease decry dedicate deduce deduct deem deepen defeat defecate defend defer
    define defraud defray defrost defy degas degenerate deglycerolize degrade deign delay delegate delimit deliver
    delude delve demand demarcate demean democratize demolish demonstrate demote demur demythologize denote denounce
    dent deny depart depend depersonalize depict deplore deploy depose deposit deprave depress deprive deride derive
    descend describe desecrate desert deserve design designate despatch despise despoil destine destroy detach detain
    detect deter deteriorate determine detest detonate detract detribalize devastate develop deviate devise devote
    devour diagnose dial dialyze dictate die differ differentiate diffuse dig digest dignify digress dilate dilute
    diminish dine dip direct disable disabuse disagree disallow disappear disappoint disapprove disarm disassemble
    disband disbelieve disburse discard discern disclose disconnect discontinue discount discourage discover
    discriminate discuss disdain disengage disentangle dishearten dishonor dishonour disintegrate disinter dislike
    dislodge dismember dismiss dismount disobey disown dispatch dispel dispense disperse displace display dispose
    disprove dispute disqualify disregard disrobe disrupt dissect dissemble disseminate dissipate dissolve dissuade
    distill distinguish distort distract distribute distrust disturb diverge divert divest divide divulge docket dodge
    dominate domineer don donate doom dovetail downgrade doze draft drag drain dramatize drape draw dread dress
    dribble drift drill drink drip drive droop drop drown drowse dry dub duck dump dunk dupe duplicate dwarf dwell
    dwindle dye earn ease eat ebb echo economize edify educate efface effectuate effloresce ejaculate eject elapse
    elate elect elevate elicit eliminate elongate elucidate elude elute emanate emancipate emasculate embark embarrass
    embed embellish embezzle embitter embody embolden emboss embrace embroider embroil emerge emigrate emit emphasize
    employ empower emulate enable enact encamp encase enchant encipher enclose encompass encounter encourage encroach
    encrust endanger endear endorse endow endure energize enervate enforce engage engender engrave engross engulf
    enhance enjoin enjoy enlarge enlist enliven enmesh enquire enrage enrich enrol enroll ensconce enshrine ensue
    ensure entail enter entertain enthrall enthrone entice entitle entomb entrench entrust enumerate enunciate envelop
    environ envisage envision envy epitomize equate equilibrate equip eradicate erase erect erode err erupt escape
    eschew escort espouse establish estimate etch eulogize evacuate evade evaluate evaporate eventuate evoke evolve
    exacerbate exaggerate exalt examine exasperate exceed excel except excise excite exclaim exclude excommunicate
    excoriate execute exemplify exert exhale exhaust exhibit exile exist exonerate exorcise expand expect expedite
    expel expend expiate expire explain explode exploit explore export expose expound express expunge extend extenuate
    exterminate extinguish extirpate extract extrapolate extricate extrude exude facilitate fade fail fall falsify
    falter fascinate fasten fathom fatten favor faze federalize feel feign feint felicitate ferry fertilize fetch fete
    fidget fight file fill filter finance find finish fit fix fizzle flake flank flap flash flatten flatter flaunt
    flee flex flick flicker flinch fling flip flirt flit float flocculate flog flop flounce flounder flourish flout
    flub fluoresce fluster flutter fly fold follow forbid forecast foreclose forego foreknow foresee foreshorten
    forestall forfeit forge forget forgive forgo formulate forsake forswear fortify foster fractionate fracture
    fraternize freeze fret frighten frizzle frogmarch frown frustrate fry fulfil fulfill fulminate fumble fume furl
    furnish fuse fuss gabble gain gallop gamble gape garland garner gash gasp gather gauge gawk gaze gear generalize
    generate germinate gesticulate get geyser giggle gild gird give glance glare glaze gleam glean glide glint glisten
    glitter gloat glom glorify glow glower glue glut glycerolize gnash gnaw goad gobble goof gore gorge gouge govern
    grab graduate grant grapple grasp gratify graze greet grieve grimace grin grind grip groan groom grope grovel grow
    growl grumble grunt guarantee guess guide gull gulp gush guzzle gyrate haggle hail halt hamper handle hang hanker
    happen harangue harass harden harrow harshen harvest hasten hatch hate haul haunt have heal hear heave heed heft
    heighten heist help herald hesitate hibachi hibernate hide highlight hijack hinder hint hire hiss hit hitch hobble
    hock hog hoist hold holler homogenize honeymoon hook hoot hop hope hover huddle hug hum humanize humiliate hunt
    hurdle hurl hurry hurt hurtle hush hustle hypnotize hypothesize identify idolize ignite ignore illuminate illumine
    illustrate imagine imbed imbibe imitate immerse impair impale impart impede impel imperil impersonate impinge
    implant implement implore imply impose imprecate impress imprint imprison improve improvise impute inaugurate
    incapacitate incise incite incline inclose include incorporate increase incubate inculcate incur indicate indict
    indoctrinate indorse induce induct indulge infect infer infest infiltrate inflame inflate inflect inflict inform
    infuriate ingest inhabit inherit inhibit initiate inject injure inlay innovate inquire inscribe insert insist
    inspect inspire instal install instigate institute instruct insulate insult insure integrate intend intensify
    interact intercede intercept interconnect interfere interject interlace interlock internalize interpose interpret
    interrupt intersect intertwine intervene interview interweave intimidate intone introduce intrude intrust inure
    invade invalidate inveigh invent invert invest investigate invite invoke involve iodinate irrigate irritate
    isolate issue italicize itch itemize jab jabber jam jangle jeer jeopardize jerk jig jilt jingle jive jog joggle
    join jostle judge jump justify juxtapose keep keynote kick kidnap kill kiss knead kneel knit knock know label lace
    lacerate lag lam lament laminate lampoon languish lash latch laugh launch laze lead lean leap learn leave leer
    legislate legitimize lend lengthen lessen let levy liberalize liberate lick lie lift lighten like limit linger
    link lionize liquidate listen live loathe lob locate lock lodge loiter look loom loop loosen lose lounge love lug
    lunge lurch lure lurk lyophilize madrigal magnetize magnify mail maintain make malinger maltreat manage manifest
    manipulate manufacture mar marinate mark marry marvel mash masquerade massacre massage mastermind match
    materialize matriculate maximize mean meander measure meddle mediate meditate meet melt memorize mend mention
    merge mesh mesmerize metabolize metamorphose mew migrate militate mince mingle minimize miscalculate miscarry
    misconstrue misfire misgauge misinterpret misjudge mislay mislead mismanage misname misperceive misplace misquote
    misread misrepresent miss mistrust misunderstand misuse miter mitigate mix moan mobilize mock modernize modify
    moisten mold molest mollify monitor monopolize moo mop motivate mottle mould mount mourn move mow muck muffle mull
    multiply mumble munch murmur muse muster mutilate mutter mystify nab nag nail narcotize narrate nasale nationalize
    naturalize navigate necessitate need neglect negotiate nestle nettle neutralize nip nod nominate notarize notch
    note notice notify nourish nucleate nudge nurture nuzzle obey oblige obliterate obscure observe obsess obstruct
    obtain occlude occupy occur offend offer officiate offsaddle offset ogle omit open operate oppose oppress ordain
    organise organize orient originate ossify ostracize oust outclass outdistance outdo outdraw outface outfight
    outgeneral outgrow outlaw outline outlive outmaneuver outmode outnumber outplay outrun outsmart outstrip outweigh
    overburden overcome overdrive overeat overemphasize overestimate overexpose overfeed overfill overflow overhaul
    overhear overheat overindulge overlap overload overlook overpower overproduce overreach override overrun
    overshadow overshoot overstep overstrain overtake overthrow overturn overwhelm overwork owe oxidise pacify pack
    paddle paint pall pamper pant paralyze parch pardon parlay parry partake participate pass pat patronize pause pay
    peck peddle peek peel peep peer pelt penalize penetrate pepper perceive perch perform perish permeate permit
    perpetrate perpetuate persecute persevere persist personalize personify persuade pertain perturb peruse pervade
    pester petrify philosophize pick pierce pilfer pillory pin pinch ping pioneer piss pitch pivot plague plan plat
    play plead please pledge plod plow pluck plummet plunge plunk ply poach poise poke polarize polish pommel ponder
    pooch pop populate portend portray pose possess postpone postulate pounce pour practise praise prance prattle pray
    preach prearrange precede precipitate preclude precondition predict predominate preempt prefer preisolate
    preoccupy prepare presage prescribe preserve preside press presume presuppose pretend prevail prevent prick print
    prise probe proceed proclaim procrastinate procure prod produce profess proffer prohibit prolong promise promote
    prompt promulgate pronounce propel prophesy propose proscribe prosecute prosper protect protest protrude prove
    provide provoke prowl pry publicize publish pucker puff pull pulsate pulverize pummel pump punch punctuate
    puncture punish punt pupate purchase purge purify purl purloin purport pursue push put putt puzzle pyramid
    quadruple quail qualify quarrel quash quell quench query quicken quickstep quip quit quiver quote radiate raid
    raise rake rally ram ramble ransack rap rape ratify rationalize rattle reach reacquaint react reactivate read
    readapt readjust reaffirm realign realize reap reappear rearrange reassail reassemble reassert reassign reassure
    reawaken rebound rebuff rebuild rebuke rebut recalculate recall recapitulate recapture recede receive recess
    recite reckon reclaim reclassify recognize recoil recollect recommend reconcile recondition reconnoiter reconsider
    reconstruct reconvene reconvert recopy recount recoup recover recreate recruit recur redden redecorate rededicate
    redeem redefine redirect rediscover redistribute redouble reduce reecho reek reelect reenact reenforce reestablish
    reevaluate reexamine refashion refer refill refinance refine reflect refuel refurbish refuse refute regain regale
    regard register regret regroup regulate rehabilitate rehash rehearse reign reimburse reinforce reinstall reinstate
    reinterpret reiterate reject rejoice rejoin relace relate relax relay relearn release relegate relent relieve
    relinquish relive reload rely relyric remain remake remand remark remarry remember remind reminisce remit remodel
    remonstrate remount remove rename rend render renew reopen reorder reorganize repair repay repeal repeat repel
    repent rephrase replace replant replenish reply report represent repress reprimand reproduce repudiate repulse
    repute request require requisition reread rerun reschedule rescind rescue reseal resemble resent reserve reset
    resettle reshape reside resift resign resist resmudge resolve resort resound respond restate restock restore
    restrain restrict resume resurrect resuspend retain retaliate retard retch rethink retie retire retort retrace
    retract retranslate retreat retrieve return reunite reuse rev revamp reveal revel reverberate revere reverence
    reverse revert review revile revise revitalize revive revolutionize revolve rewrite ricochet rid riddle ride
    ridicule riffle rig ring rinse rip ripen rise risk ritualize rive rivet roam roar roast rob roleplay roll
    romanticize romp roost rot rotate roughen rouse rout rub ruffle rummage run rupture rush rust rustle sacrifice
    sadden safeguard sag sail salivate salute salvage sanction sap sashay satiate satisfy saturate saute save savor
    savvy say scab scamper scan scandalize scare scarify scatter schedule scoff scold scoot scorch scour scout scowl
    scramble scrape scratch scrawl scream screech screw scribble scribe scrounge scrub scrutinize scud scuff scurry
    scuttle seal sear search secede seclude secrete secularize secure see seek seem seep segregate seize select sell
    send sensitize separate serve set settle sever sew shake shamble share sharpen shatter shave shelve shift shimmy
    shine shirk shiver shoot shorten shout shove show shrink shroud shrug shudder shuffle shun shut shuttle sicken
    sidestep sidle sift sigh sign signify simmer simplify simulate sing singe sink sip sire sit situate sizzle
    skedaddle skid skim skip skulk skylark slacken slam slap slash slate slaughter slaver sleep slide slime sling
    slink slip slop slug sluice slumber slump slurp smack smash smear smell smile smirk smite smolder smother smuggle
    snag snap snarl snatch sneak sneer snicker sniff snigger snoop snore snort snub snuggle soak soar socialize soften
    solder solicit solve soothe sorb sour souse sow span spang spare speak spear spearhead specialize specify
    speculate spend spill spin spit splash splice split spoil sponge sponsor spout sprain sprawl spread sprinkle
    sprint sprout spurn sputter spy squall squash squat squawk squeak squeal squeeze squelch squint squirm squirt stab
    stabilize stack stagger stain stake stalk stammer stamp stampede stand standardize stare start startle starve stay
    steal steam steer sterilize stiffen stifle stimulate sting stink stipulate stir stoke stomp stoop stop stow
    straddle strafe straggle straighten strangle stratify stray strengthen stretch strew stride strike strive stroll
    strop strum stud stumble stun stutter sub subcontract subdue subjugate submerge submit subpoena subscribe subside
    subsidize subsist substantiate substitute subtend subtitle subtract subvert succeed succumb suck sue suffer
    suffice suffocate suffuse suggest sulk sulphur summarize summate summon sunder sup superimpose superintend
    supersede supervise supplant supplicate supply support suppose suppress surfeit surge surmise surmount surpass
    surprise surrender surround survey survive suspect suspend sustain swab swagger swallow swap swarm swathe sway
    swear sweep swell swerve swim swindle swing swipe swirl swish switch swivel swoon swoop symbolize sympathize
    synchronize synthesise synthesize systematize tabulate tack tackle tag tailor take talk tamper tantalize tap taper
    tarnish tarry tat taunt teach tear tease teem teeter telescope televise tell tempt tend terminate terrify
    terrorize test testify tether thank thaw theorize thicken think thrash thread threaten thresh thrive throb throw
    thrust thud thump thwart tie tighten tilt tinge tingle tinker tinkle titter toast toil tolerate topple torture
    toss totter touch trace trail train tramp trample transact transcend transcribe transfer transfix transform
    transgress translate transmit transmute transpirate transplant transport transpose travel traverse tread treat
    tremble trespass trickle trim trot trudge trundle trust try tuck tug tumble tunnel turn tweeze twiddle twine
    twinkle twirl twist twitch typify unclasp uncork uncover uncurl underestimate undergo underlie underline undermine
    underpin underrate underscore understand understate undertake underwrite undo undress undulate unearth unfasten
    unfold unhitch unify unite universalize unlace unlash unleash unload unlock unmask unpack unravel unscramble
    unscrew unsheathe unsolder unteach unthaw untie unveil unwind unwire update upgrade uphold upholster uplift
    upraise uproot upset urbanize urge use usher usurp utilize utter vacate validate vanish vanquish vary veer veil
    venerate ventilate venture verify vest vex vibrate victimize vie vindicate violate visit visualize vivify vocalize
    volunteer vomit vote vouch vouchsafe vow wad wade waft wag waggle wail wait waive wake walk wallop wallow wander
    wane wangle want warble warn warp warrant wash waste watch waver waylay weaken wean wear weatherstrip weave wed
    weep weigh welcome weld wend whack wheedle wheeze whet whimper whine whinny whip whirl whisk whisper whistle
    whiten whiz whoop widen wield wiggle wilt win wince wink winnow wipe wisecrack wish withdraw wither withhold
    withstand witness wobble wonder woo woolgather work worry worsen wrangle wrap wreak wreathe wreck wrench wrestle
    wriggle wring write writhe yap yawn yearn yell yelp yield zigzag zip zoom
    """.split()
)
"""Verbs in the form that stands behind `may`, `will` and `to`, and behind no name."""

ABSTRACT = frozenset(
    """
    abasement aberration ability abjection abnormality abridgment abruptness abscess abscissa absence absorbency
    abstention abstruseness absurdity abundance accent accordance account accuracy accusation acetonemia acidity
    acquiescence acreage activism actuality adaptation adenoma adequacy adieu adios adjective admiration admonition
    adroitness advantage adverb adversity advertisement advice advisability affair affairs affection affidavit
    affirmation affluence age agenda aggression agitation agony agreement ague ailment aimlessness airs alchemy
    alerting alertness alibi alienation allegation allegory allusion aloneness aloofness alpha altercation alternative
    altitude altruism amazement ambiance ambiguity ambition amity amphibology amusement anaesthesia analogue analogy
    analyticity anaplasmosis anarchy anecdote anemia anger angst anguish animosity announcement annoyance anomie
    anonymity anorexia antagonism anthropology anticipation antipathy anxiety aplomb apologia apology appearance
    appendix appetite applause appraisal appreciation apprehension approximation aptitude archives ardor arena argot
    argument aridity arithmetic aroma arrangement arrogance arrow arthritis article articulation artistry arts
    ascendancy aspect aspiration assent assertion assertiveness assessment assiduity assumption assurance asterisk
    astonishment astronomy astrophysics asymmetry athleticism atrophy attention attitude audacity austerity
    authenticity authorization autonomy availability aversion awareness awe awfulness axiom axis babel backbone
    background badge badness balance balkiness ballad ballot ballyhoo bankruptcy banter bargain bargaining bass bathos
    beacon beauty beggary belief bereavement bewilderment bias bible bibliography bickering bilharziasis bill bioassay
    biography biology biomedicine biopsy birthright bitterness blackness blandness blasphemy blatancy blemish
    blindness bloat blot blotch blues bluster boldness bombast bonus book boredom braggadocio brand bravado bravery
    brazenness breadth brevity briefing brightness brilliance brilliancy broadcast broadcasting broadside
    bronchiolitis brucellosis bulk burden bursitis cadence cadenza caliber calibre callousness calmness calumny
    camaraderie cancer candour canon cant capability capacity captivity cardiomegaly cartoon castigation catalog
    catalogue catcall caution caveat celerity censure centering certainty certificate certiorari certitude chagrin
    championship chance channel chaos chapter charisma charm chart charter checklist cheer cheerfulness cheering
    chemistry childishness chill chivalry cinema circulation circumference circumstance circumstances citation
    clairvoyance clamoring clannishness claret clarity classics clause clearance clearness cleverness cliche climate
    clubfoot clue coccidiosis code coexistence cognizance cohesion cohesiveness coldness collusion color coma comeback
    comedy comfort command commandment comment commentary commiseration commotion communicating communication
    communique companionship compassion competence complaint complaisance complement completeness complexion
    complexity complicity compliment comportment composing composite composure comprehension compulsion compulsivity
    compunction conceit concentration concept conceptuality concert concerto concession conciseness conclusion
    condensation condescension condition conditioning confession confidence configuration confines confirmation
    confrontation confusion congestion conjunction connotation conscience consciousness consensus consent conservatism
    consideration consistence consistency consolation consonant conspiracy constancy constatation constellation
    consternation consultation contamination contempt contention context continence continuity contour contract
    contrition controversy contusion convenience conversation convexity conviction coolness coral corporeality
    corpulence correctness corruption counseling countenance counterpart counterpoint coupon courage covetousness
    cowardice coyness craftsmanship cramp crassness craze creativeness creativity credo creed criminality crispness
    criterion criticism croaking crudity cunning curiosity curriculum curtness custody cyst cytolysis damnation danger
    darkness datum deadlock debate debility deceit deceleration decency declamation declaration decomposition decorum
    decree decrement dedication defect defiance deficiency deficit definition deflection degree dejection deliberation
    delight delineation delirium demeanor democracy demonstrative denial denseness density denunciation dependence
    dependency depravity depression depth derision derivative description designation desire desolation despair
    desperation despondency despotism detail details detergency deterioration determinant deterrent diabetes dialect
    dialectic dialogue diam diameter diarrhea diarrhoea diary dickens dictionary dictum difference dignity dilemma
    diligence dimension diplomacy directive directivity directory dirge disability disadvantage disagreement
    disapproval disarray disbelief discipline disclosure discomfort discontent discontinuity discourse discretion
    discussion disease disguise disinterest disloyalty dismay disorder disparagement displeasure disrepair disrepute
    dissemination dissension dissent distance distaste distinction distinctness distraction distress distribution
    ditty diversity divertimento divestiture doctorate doctrine documentary doggerel dogma dominance dominion doubt
    dream drought drowsiness drunkenness dryness durability dynamics dysentery eagerness earnestness eccentricity
    economics ecstasy edema editorial effectiveness efficacy ego egotism ejaculation elasticity elation electronics
    elegance element embargo embarrassment eminence emotion emotionalism emotionality emphasis emphysema empiricism
    emptiness enchantment encumbrance encyclopedia ending endowment endurance enervation enigma enjoyment
    enlightenment enormity enterotoxemia enthalpy enthusiasm entirety environment epigram epistemology epitaph epithet
    epitome equality equanimity equation equivalence equivalent essay essence esteem estrangement ethic ethics ethos
    etiquette euphoria evidence evocation example exasperation excellence exception excitability excitement exclaiming
    exclamation exclusion exclusiveness excursus excuse exemplar exemption exhaustion exhortation exigency existence
    expanse expansiveness expectancy expectation experience expertise explanation expletive exposition exposure
    expression extent extrapolation exultation eyes eyesight eyestrain facet fact fairness fairyland fairytale faith
    falsity fame familiarity fanaticism fanfare fantasia fantasy fantods farce fare farewell fasciculation fascination
    fascism fashion fatigue fear feasibility feature fecundity feebleness feelings femininity ferment ferocity fervor
    fever fiat fibrosis fiction fidelity fierceness fig figuring filing fillip film fineness fingerprint finishing
    firepower firmness fitness flair flashback flatness flattery flavor flaw flexibility flu flyer focus focusing
    foible folklore fondness foolishness footing footnote footprint foreboding forecasting foreground foreknowledge
    foresight forgetfulness form formalism formative formula forte fortitude fostering fountainhead fracas fragrance
    frambesia framework franchise freedom frenzy freshness friction friendliness friendship fright frontage frostbite
    fruitfulness frustration fullness fundamentals furor fury futility gag gaiety gallantry gamma gamut gender
    generosity genre geochemistry geology geometry germ ghost giddiness givenness glamor glanders glaucoma glee
    glibness gloom glory glossary goal goitre goodness gospel gossip gout grace graining grandeur grapevine graph
    grasping gratification gratitude greatness greed greenness greeting grief grievance gripe groundwork growling
    grudge guessing guideline guidepost guilt gusto guts haiku hallelujah hallmark hallucination halo handclasp
    handicap handshaking handwriting hangover happiness hardship harmony harshness haste hatred hazard headache
    heading headline headlinese health heaviness hedonism height hello helplessness hemorrhage hemorrhoid hepatitis
    heritage hermeneutics heroism hesitancy hesitation hex hexameter hilarity histology histrionics hollering
    hollowness homogeneity honesty honour horoscope horselaugh horsemanship hospitality hostility hotness howl hubris
    hue humanism humidity humiliation humility humor hunch hunger hyalinization hymn hyperemia hyperplasia hypertrophy
    hypocrisy hypothesis hysteria idea identity ideology idiom idiosyncrasy ignorance ilk illegitimacy illness
    illumination illusion illustration image imagery imagination imaging imbalance immediacy immensity imminence
    immobility immortality immunity impasse impatience imperialism implication importance importunity impotence
    impotency imprecation impression imprimatur impropriety impulse impunity inability inaccuracy inaction inadequacy
    inadvertence incantation incentive incompetence inconvenience indecision indefinity independence indication
    indicator indictment indifference indigestion indignation individualism individuality indolence inducement
    inequality inertia inevitability inexperience infatuation infection inference inferiority infidelity infinitive
    infirmity influence information ingratitude inkling innocence input inquiry insanity inscription insight
    insinuation insistence insolence insouciance instability instancy instinct instructions insularity insulation
    integrity intellect intelligence intensity intention intentness intercourse interest intermarriage interpreting
    interrogation interrogative intersection intimacy intolerance intonation intransigence introject intuition
    invitation invocation irony irresolution irreverence irritability irritation ism isolation italic jargon jealousy
    jeopardy jibe joke jot journal journalese journalism joy juju jumble jurisdiction jurisprudence justification
    justness keenness kerygma ketosis kind knack lack lamentation landler language languor laughter laurels laxness
    learning leavening lecture legend legibility legislation legitimacy leitmotiv lemma length leprosy lesion letdown
    lethality lethargy letter letterhead lettering letters level lexicon liaison liberalism liberty libretto license
    life likelihood likeness liking lilt limbo limitation lineup linguistics list literalism literalness literature
    lobularity logarithm logic loneliness longevity longing lordship lore lousiness loveliness loyalty lucidity
    lullaby luminosity luster lustre luxury lyric madness magazine magnificence magnitude majesty majority malady
    malaise malaria malediction maleness malevolency malignancy mandamus manfulness manhood mania manner manners
    mantle manual manuscript marbleizing marginality marking marksmanship masculinity mastery materialism math
    mathematics matrimony matsyendra matter meaning meanness medal mediocrity meditation medley megalomania melodrama
    melody memoir memorabilia memorandum memorial memorization memory menace mentality menu meq merit mess message
    metaphor method microcosm mien mileage milieu mimesis mind mineralogy minutia misconception misery misgiving
    misnomer missive mistaking mobility mockery mode moderation modernity modesty modifier modulation moisture
    momentum monograph monologue monopoly monosyllable monotony mood morale morality morals mores morphology mortality
    mortification motto movie muddle multiplicity music musicianship musing myelofibrosis mystery mystique myth nadir
    nakedness name narrative narrowing narrowness nationalism naturalism naturalness nausea nearness negotiation
    nerves nervousness neurosis neuter neutralism news newsletter nicety nightmare nihilism nirvana nonfiction
    nonoccurrence nonsense nostalgia notation notebook notion noun novelty nuance nuisance numbering numbness oath
    objection objective objectivity oblivion obscenity obscurity obtrusiveness obverse occasions occlusion ocher odds
    odor offering ology oneness opera operetta opinion opportunism opportunity optimism opus oration oratorio
    orchestration order orderliness ordinance ordinate originality orthodoxy orthography osteoporosis outcry outlook
    overcast overtone overture pact paean paganism page paging pain pallor pamphlet pang panic pap papers parable
    paradox paragon paragraph parallelism parameter paraphrase parenthesis parenthood parisology parlance parody
    paroxysm passion passivity patchwork patent pathology pathos patience patriotism patter paucity peace peasanthood
    peculiarity pelting pennant perception perfection perfectionism peril periodical periodicity permanence permission
    persistence persistency persona perspective perturbation perusal pessimism petition petulance phantasy philippic
    philosophy phoneme phonemics phonetics phonology phrase phraseology physicalness physics physiology physique
    pianism pidgin piety pillar pimple pitfall plasticity pleasure plenitude plight plot plumpness pneumonia poem
    poetry poignancy point policy polio politeness polka poll pollution polymyositis polynomial pompousness popularism
    popularity porosity positivism possibility poster postmark postscript posture potency potentiality poverty power
    powerfulness powwow preaching preamble precedence precedent precision preconception predicament predicator
    prediction predilection predominance predomination preexistence preference prefix prejudice premiere premise
    premonition preoccupation preposition prerequisite presence presentness prestige presumption pretence pretension
    pretext prettiness prevalence prevision price pricing pride primacy primer principle priority privacy privilege
    probability problem proclamation productivity profanity proficiency profile profitability profundity profusion
    program progressivism prohibition projection prominence promotion pronoun pronouncement proof propaganda prophecy
    proposal proposition propriety prose prosody prospect prosperity protestation prototype proverb provincialism
    provision proviso prowess proximity prudence psychology psychotherapy publicity pun punctuality purgatory purity
    purpose puzzlement qualification quality qualm quatrain quest question questioning questionnaire quickness
    quietness quintet quiz quotation radicalism rage rancor rapidity rapture rasp rating rationale rationalism
    reactivity readiness reading reality realm reason reasoning recession recital recklessness reckoning recognition
    recollection recrimination rectitude redefinition redundancy reenforcement reevaluation reference reflection
    refrain refusal registry regularity regulation reliability reliance religion religiousness reliving remembrance
    reminder remonstrance remorse rendition renunciation reorientation repentance reporting repression reprieve
    reproach reproof repugnance reputation resemblance resentment resignation resilience resolution respect respects
    restatement restlessness restriction retardation retentiveness retirement retrospect retrovision revelation
    reverberation reverie reversibility revery revulsion rheumatism rhyme rhythm richness righteousness rightness
    rigor roadblock robustness romance romanticism roster rotundity roughness rubric rudeness rule rumor rundown
    ruthlessness sadism sadness sake salesmanship sameness sample sanctity sanity sarcasm sassing satiety satire
    satisfaction savageness scandal scar scarcity scenario scent scepticism scheme scherzo sciatica science scoffing
    scope score scorn scours scratchiness screenplay script scripture secrecy secularism security seizure selfishness
    semblance semitrance seniority sensation sense sensibility sensing sensitivity sensuality sentence sentiment sepia
    serenity serialism seriousness sermon severalty severity sextet sforzando shade shadow shaft shallowness shame
    shape sharpness shibboleth shirtsleeves shoes shortage shortness shouting showcase showdown shriek shrieking
    shucks siamese sickness sight signal signaling signature significance signpost silence similarity simile
    similitude simplicity sincerity sinfulness singularity situation size skepticism skill slapstick slavery slogan
    sloganeering slot slovenliness slowing slowness smallness smallpox smoothness sob sobriety sociability socialism
    sociality softness soldiering solemnity solicitude solidarity solidity solipsism solitude song sonnet sonority
    sorrow sort sound southernism sovereignty spaciousness spasm spatiality speaking specialty specification
    specificity spectacle speculation speech spelling spinnability spite splendor splenomegaly spontaneity sprue
    squabble stability staginess stagnation stance standpoint standstill stardom statement statesmanship stationery
    statistic stature status statute stenography stereotype stewing stiffness stillness stimulus stoicism story
    storyline strangeness strategy strength stress stubbornness stupidity stupor style stylemark subject subjugation
    subterfuge subtlety suddenness suffering suffix suffrage suggestion suitability summarization summary summation
    superiority superstition suppleness supremacy surety surroundings survival suspense suspicion swearing sweetness
    syllabicity syllable symbol symmetry sympathy symphony symptom syndrome synonym tabulation tact tactic tactics
    taint tale talking talks tan tang tantrum tapestry taste technique telegram telegraphy telepathy television
    temerity temper temperament temperature tempest temptation tenacity tendency tenderness tenet tenor tense tension
    tentacle term terminology terror testament testimonial testimony text texture thankfulness thanks theme theology
    theorem theory thermostatics thesis thickness thinking thinness thirst thorn thoroughness threat thrill thriller
    throe thrombosis thrombus ticket tidings tilth timbre timeliness timetable timidity timing titer title token topic
    topography torment torpor totality touchstone toughness trademark tradition trait trance tranquility transcription
    transience translucence travelogue treachery treaty trepidation tribute trill triviality truculence truth
    truthfulness tuberculosis tularemia tumor tumour tumult tune turmoil tutorial twinge type typewriting typhoid
    typhus typing ugliness ulcer ulceration ultimatum unambiguity unawareness unbalance uncertainty unconcern
    undercurrent understanding uneasiness unemployment unhappiness uniformity uniqueness unity universality unrealism
    unreality unreason unrest unselfishness untruth unwillingness upheaval uproar urgency usefulness uselessness
    utopia utterance vacancy vacuolization vacuum vagueness validity valor valuation value values vanity variability
    vaudeville vector vehemence veracity verb verification versatility verse version vertex vertigo verve vestige
    vexation viability vibrancy vice view viewpoint vigilance vignette vigor virginity virtue virulence viscosity
    visibility vision vista visualization vitality vividness vocabulary vogue voice volition vowel vulnerability
    wakefulness warmongering warmth warning wavelength weakness wealth weariness weight welter wetness whim whiteness
    whodunit width wildness will willingness willpower wisdom wishing wit woe wonderfulness woodgrain woodgraining
    word wording words worksheet worriment worthlessness wrath wretchedness writ wrongdoing yardage yarder yardstick
    yaws yearning yen yes yoga zeal zest
    """.split()
)
"""Nouns of what nobody sees: feelings, states, thoughts."""
