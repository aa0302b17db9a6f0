# Was ein Heft über sich selbst sagt.

edition-first = Erste Ausgabe
