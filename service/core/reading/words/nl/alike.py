"""Dutch: frequent words that mean nothing here and are one slip away from one that does."""

ALIKE = (
    "aangepast aangetast aangevangen aankopen achtereen achterin achterland achterwand acteren aders afgedaald "
    "afgekomen aleen allen andes andre andres bedel beging behoeden benden beplanting beren berkhout besneden "
    "bezwaren boeven breedste breugel brouwer buien central correcte davis diepste doodgestoken draagbaar "
    "eventuele gebruikten gemeen gemoeten geplast gesmeten gevangen gewricht gezangen grootse grootte haelen "
    "helende heling helpende hooge hoogste juriste juste kappen kernen kranten lader lente lever loosdrecht "
    "mahone massive meeden meeting meningen meten moesten montagne neger niest oever onderdaan ondergaan "
    "onderhand onderhandelaar onderpand opgegeten opgeknapt opknappen overgang positive rechter riekt roteren "
    "satan schattig scheen schelpen schengen scheppen scherpen schim schreven schutting seven siegel staar "
    "stalken stallen stekken sterken sterven stralen streken streven treed uitstrekt veder verdienen verdween "
    "vereerd vergeeft verkeer verkleden verkozen verleerd verlegen verleiden verlenen verlopen vermeden "
    "vermissing verreden verteerd vervalsen vervullen verweerd verzocht verzopen voeren voordeur voorgaan "
    "voorouder voorruit voortaan voorzover vormige vriendin weggegaan wenen wensten woerden woorden zoden zwanger"
)
