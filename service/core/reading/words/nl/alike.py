"""Dutch: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "aangepast aangepaste aangetast aangetaste aangevangen aanklagen aankopen achterban achtereen achterhoek "
    "achterin achterland achterwand acteren aders afgedaald afgekomen afwijzing aleen algemene allen andes andres "
    "bedel beging behoeden benden beplanting beren berkhout besneden bezwaren boeven borden breugel brouwer buien "
    "central correcte davis diepste doodgestoken draagbaar draagbare electrische eventuele gebruikten gedeelte "
    "gehele gemeen gemoeten geplast gesmeten gevangen gevel gewonde gewricht gezangen groef grootse grootte "
    "haelen handdoek helende heling helpende hooge juriste juste kappen kernen kranten laaste lader lente lever "
    "loosdrecht mahone massive meeden meeting meningen meten mobil moesten montagne neger niest oever onderdaan "
    "ondergaan onderhand onderhandelaar onderpand onhaalbaar opbouwen opgegeten opgeknapt opgevangen opknappen "
    "overgang planning portal positive rechter rechtshandig riekt roteren satan schattig scheen schelpen schengen "
    "scheppen scherpen schim schotten schreven schuit schutting seven siegel slaag sprint staar staart stalken "
    "stallen stekken sterken sterven stralen streken streven tolerante treed uitslapen uitstaan uitstrekt "
    "uitvoerig veder verdienen verdween vereerd vergeeft verkeer verkleden verkozen verleerd verlegen verleiden "
    "verlenen verlopen vermeden vermissing verreden verstrekt verteerd vervalsen vervullen verweerd verzocht "
    "verzopen voeren voordeur voorgaan voorouder voorruit voortaan voorzover vormige weggegaan wenen wensten "
    "woerden woorden zaait zoden zwanger"
)
