"""Swedish: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "agren akare akern akten anvandes avvarja baker bates batra befaller befattning behovas behovts besittning "
    "beskattning besvara besvarad besvaras bevarats biden bilen blasa bojan borat borste bosattning boten bottnen "
    "bread breder brotten bryggare delta dementera dementerar duken farligare finans flyta flyttande fordrar "
    "forlagt forne fornedra fornedrar forsatta forsvarar forsvaras forsvunna forsvunnet forutsatta forvanar "
    "forvanas forvarra forvarrar forvarras framkom frammat galleri gallery gamal gnaller godiset granen haken "
    "halet hallt hellas helle heller hogar hojen hojer hosta hotar hotat hoten investerad kampade kanoten kloster "
    "konet konster koranen kront lagre lamnat lamnats lanas landen langare lange langen ledare luktade malningar "
    "marek maten minen monsteras montrar narmre nasan oarna oklar oklart orolig oskar ovant overford overgang "
    "overgangen overhanden overkord overta plats platsen punken racet rackt rackte rakat raket ranat rankat "
    "riktning riktningar riktningarna riktningen rivningen roren roret rostock sadla sager sajer saknats sanger "
    "sangs sankas sanna segel siter skada skadad skadan skidorna skjutsar skrattat skule skurkarna slade slipa "
    "spetsade spracker stalet stallt stamplat steen storta strackor surra svaljer svangar svans svarar svetsare "
    "tappa undrande uppfylld uppfyllt uppsattning uppskattande upptratt utsag vaken varen varna vaster vastra "
    "vattern vattnen vikar viken"
)
