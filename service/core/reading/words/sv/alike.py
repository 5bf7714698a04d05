"""Swedish: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "agren akare akern akten anvandes avvarja baker bates batra befaller befattning behovas behovts besittning "
    "beskattning besvara besvarad besvaras bevarats biden bilen blasa bojan borat borste bosattning boten bottnen "
    "bread brotten bryggare delta dementera dementerar duken farligare finans flyta flyttande fordrar forlagt "
    "forne fornedra fornedrar forsatta forsvarar forsvaras forsvunna forsvunnet forutsatta forvanar forvanas "
    "forvarra forvarrar forvarras framkom frammat galleri gallery gamal gnaller granen halet hallt hellas helle "
    "heller hogre hojen hotat kampade kanoten kloster konster koranen lagre lagst lamnat lamnats lanas landen "
    "langare lange langen langt lutade malningar marek maten minen monsteras montrar nasan oarna oskar overford "
    "overgang overkord plats platsen racet rackt rackte raket riktning riktningar riktningarna riktningen "
    "rivningen roret sadla sager sajer saknats sankas sanna segel siter skada skadad skadan skidorna skjutsar "
    "skule skurkarna slade slipa stalet stallt steen storta surra svaljer svangar svanger undre uppsattning "
    "upptratt utsag vaken varen varna vaster vattern vattnen vikar viken"
)
