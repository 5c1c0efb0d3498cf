package words

import (
	"strings"

	"ellwand/pieces/language"
	"ellwand/pieces/linework"
)

// InDrawing says what is wrong with a drawing in a file, where, and what to do.
func InDrawing(f *linework.Fault) language.Sentence {
	sentence, known := inDrawing[f.Of]
	if !known {
		return language.Name(f.Error())
	}
	return language.Join("", append(placeInDrawing(f), sentence(f))...)
}

// placeInDrawing is what stands before the sentence.
func placeInDrawing(f *linework.Fault) []language.Sentence {
	var out []language.Sentence
	if f.Page > 0 {
		out = append(out, language.Say("page %d: ", "Seite %d: ", f.Page))
	}
	if f.Line > 0 {
		out = append(out, language.Say("line %d: ", "Zeile %d: ", f.Line))
	}
	if f.Piece != "" {
		out = append(out, language.Say("piece %q: ", "Teil %q: ", f.Piece))
	}
	if f.Element != "" {
		out = append(out, language.Name("<"+f.Element+"> "))
	}
	if f.Attribute != "" {
		out = append(out, language.Name(f.Attribute+": "))
	}
	return out
}

type sentenceOfDrawing func(f *linework.Fault) language.Sentence

var inDrawing = map[linework.Defect]sentenceOfDrawing{
	linework.NoLines: ofDrawing("there are no lines in it; if it holds pictures, trace it as a photo or scan",
		"es sind keine Linien darin; sind es Bilder, nehmen Sie es als Foto oder Scan"),
	linework.TooFar: ofDrawing("a line of it reaches farther than 1 km; its scale is wrong, or the file is "+
		"damaged",
		"eine Linie darin reicht weiter als 1 km; der Maßstab stimmt nicht, oder die Datei ist "+
			"beschädigt"),
	linework.DotsOnly: ofDrawing("the drawing holds pictures of dots and no lines; trace it as a photo or scan",
		"die Zeichnung enthält Bilder aus Punkten und keine Linien; nehmen Sie sie als Foto oder "+
			"Scan"),

	linework.NoSuchLines: func(f *linework.Fault) language.Sentence {
		return language.Say("there are no lines %d; the overview numbers them from 1 to %d",
			"Linien %d gibt es nicht; die Übersicht zählt sie von 1 bis %d", f.Number, f.Known)
	},
	linework.NoSuchLayer: func(f *linework.Fault) language.Sentence {
		return language.Say("there is no layer %q; it has %s", "eine Ebene %q gibt es nicht; es gibt %s", f.Text, layersOf(f))
	},
	linework.NoSuchPage: func(f *linework.Fault) language.Sentence {
		return language.Say("there is no page %d; the file has %d",
			"eine Seite %d gibt es nicht; die Datei hat %d", f.Number, f.Known)
	},
	linework.OverlapUnsure: ofDrawing("how far the sheets lie over each other was not found, since the lines fit by "+
		"several; measure it, or read it in the instructions, and say it",
		"wie weit die Blätter übereinander liegen, war nicht zu finden, weil die Linien auf "+
			"mehrere Arten passen; messen Sie nach, oder lesen Sie es in der Anleitung, und geben Sie "+
			"es an"),
	linework.SheetsUnjoined: func(f *linework.Fault) language.Sentence {
		return language.Say("%d lines run off the sheets, and how these go together was not found",
			"%d Linien laufen über die Blätter hinaus, und wie diese zusammengehören, war nicht zu "+
				"finden", f.Number)
	},

	linework.NotPDF: ofDrawing("it is no PDF file", "es ist keine PDF-Datei"),
	linework.CutShort: ofDrawing("the PDF file is not complete; fetch it again",
		"die PDF-Datei ist nicht vollständig; holen Sie sie noch einmal"),
	linework.Damaged: ofDrawing("the PDF file is damaged; fetch it again, or open it in a viewer and print it to a "+
		"new file",
		"die PDF-Datei ist beschädigt; holen Sie sie noch einmal, oder öffnen Sie sie in einem "+
			"Betrachter und drucken sie in eine neue Datei"),
	linework.Locked: ofDrawing("the PDF file is encrypted; ask the seller for one that is not, or print it, lay a "+
		"ruler beside it and trace a photo of it",
		"die PDF-Datei ist verschlüsselt; bitten Sie um eine unverschlüsselte, oder drucken Sie "+
			"sie, legen ein Lineal daneben und nehmen ein Foto davon"),
	linework.Packed: ofDrawing("the drawing in the PDF file is packed in a way that is not read; open it in a viewer "+
		"and print it to a new file",
		"die Zeichnung in der PDF-Datei ist so verpackt, dass sie hier nicht gelesen wird; öffnen "+
			"Sie sie in einem Betrachter und drucken sie in eine neue Datei"),
	linework.NoPages: ofDrawing("the PDF file has no pages", "die PDF-Datei hat keine Seiten"),
	linework.TooManyPages: func(f *linework.Fault) language.Sentence {
		return language.Say("the PDF file has more than %d pages; take out those of the pattern",
			"die PDF-Datei hat mehr als %d Seiten; nehmen Sie die des Schnitts heraus", f.Number)
	},
	linework.NoPaper: ofDrawing("it says no size of its paper; open the file in a viewer and print it to a new one",
		"die Papiergröße fehlt; öffnen Sie die Datei in einem Betrachter und drucken sie in "+
			"eine neue"),
	linework.PaperNoSize: ofDrawing("its paper has no size; open the file in a viewer and print it to a new "+
		"one",
		"das Papier hat keine Größe; öffnen Sie die Datei in einem Betrachter und drucken sie "+
			"in eine neue"),
	linework.OnlyPictures: ofDrawing("the PDF file holds pictures of dots and no lines; trace it as a photo or scan",
		"die PDF-Datei enthält Bilder aus Punkten und keine Linien; nehmen Sie sie als Foto oder "+
			"Scan"),

	linework.NotSVG: quoting("it is no SVG drawing: it begins with <%s>, not with <svg>",
		"es ist keine SVG-Zeichnung: sie beginnt mit <%s>, nicht mit <svg>"),
	linework.NoDrawing: ofDrawing("it is no SVG drawing: there is no drawing in it",
		"es ist keine SVG-Zeichnung: es ist keine Zeichnung darin"),
	linework.Entities: ofDrawing("it defines entities, which a drawing has no use for and a hostile one may fill the "+
		"memory with; save it as plain SVG",
		"es legt Entitäten fest, die eine Zeichnung nicht braucht und eine feindliche den "+
			"Speicher füllen lassen kann; speichern Sie sie als einfaches SVG"),
	linework.Entity: ofDrawing("it has an entity, which a drawing has no use for; save it as plain SVG",
		"es hat eine Entität, die eine Zeichnung nicht braucht; speichern Sie sie als einfaches SVG"),
	linework.Incomplete: quoting("it is no complete SVG drawing (%s); save or fetch it again",
		"es ist keine vollständige SVG-Zeichnung (%s); speichern oder holen Sie sie noch einmal"),
	linework.Encoded: quoting("it cannot be read: it is written in %s; save it as UTF-8",
		"es lässt sich nicht lesen: es ist in %s geschrieben; speichern Sie es als UTF-8"),
	linework.Unreadable: quoting("it cannot be read: %s", "es lässt sich nicht lesen: %s"),

	linework.NumberMissing:  quoting("a number is missing at %q", "bei %q fehlt eine Zahl"),
	linework.NumberTooLarge: quoting("%s is too large", "%s ist zu groß"),
	linework.BitMissing:     quoting("0 or 1 is missing at %q", "bei %q fehlt 0 oder 1"),
	linework.PointHalf: ofDrawing("a number is missing, each point has two",
		"eine Zahl fehlt, jeder Punkt hat zwei"),
	linework.NoLength:     quoting("%q is no length", "%q ist keine Länge"),
	linework.NegativeSize: quoting("%s is negative", "%s ist negativ"),
	linework.NoBox: quoting("%q is no box of four numbers with a width and a height",
		"%q ist kein Rahmen aus vier Zahlen mit Breite und Höhe"),
	linework.NoMove: quoting("a path begins with M, this one with %q",
		"ein Pfad beginnt mit M, dieser mit %q"),
	linework.NoCommand: quoting("%q is no command of a path", "%q ist kein Befehl eines Pfads"),
	linework.NoTransform: quoting("transform %q cannot be read",
		"die Umformung %q lässt sich nicht lesen"),

	linework.UsesAnother: quoting("it uses %q of another file; open the drawing in the program that made it, and "+
		"embed what is linked",
		"es benutzt %q aus einer anderen Datei; öffnen Sie die Zeichnung in dem Programm, das sie "+
			"gemacht hat, und betten Sie das Verknüpfte ein"),
	linework.UsesNothing: quoting("it uses %q, which is not there; the file is damaged",
		"es benutzt %q, und das fehlt; die Datei ist beschädigt"),
	linework.ShowsItself: quoting("%q shows itself over and over; it is not a drawing",
		"%q zeigt sich immer wieder selbst; es ist keine Zeichnung"),
	linework.ScaledToNothing: ofDrawing("it is scaled to nothing, or to no size at all; undo that in the program that "+
		"drew it",
		"es ist auf nichts verkleinert, oder auf gar keine Größe; nehmen Sie das in dem Programm "+
			"zurück, das es gezeichnet hat"),

	linework.NotOwn: func(f *linework.Fault) language.Sentence {
		return language.Say("%s=\"%s\" cannot be read; write the drawing anew with ellwand export",
			"%s=\"%s\" ist nicht zu lesen; schreiben Sie die Zeichnung mit ellwand export neu", f.Key, f.Text)
	},
	linework.AllowanceAmiss: quoting("the allowance of edge %q is no length", "die Zugabe der Kante %q ist keine Länge"),
	linework.NotchAmiss: quoting("the place of a notch on edge %q is no length",
		"der Ort eines Knipses an der Kante %q ist keine Länge"),
	linework.StrokesAmiss: quoting("the strokes of a notch on edge %q are no number",
		"die Striche eines Knipses an der Kante %q sind keine Zahl"),
	linework.DartCornersFew: quoting("dart %q has too few corners", "der Abnäher %q hat zu wenige Ecken"),
	linework.MarkPlacedAmiss: quoting("the place of mark %q cannot be read",
		"der Ort der Markierung %q ist nicht zu lesen"),

	linework.Binary: ofDrawing("it is a binary DXF file; write it as ASCII DXF",
		"es ist eine binäre DXF-Datei; schreiben Sie sie als ASCII-DXF"),
	linework.NoCode: ofDrawing("a group code is expected here, a whole number; is the file damaged?",
		"hier wird ein Gruppencode erwartet, eine ganze Zahl; ist die Datei beschädigt?"),
	linework.CutInGroup: func(f *linework.Fault) language.Sentence {
		return language.Say("the file ends in the middle of a group, after line %d; is it complete?",
			"die Datei endet mitten in einer Gruppe, nach Zeile %d; ist sie vollständig?", f.Number)
	},
	linework.FarNumber: quoting("%.20q is no number that a drawing can have",
		"%.20q ist keine Zahl, die eine Zeichnung haben kann"),
	linework.NoArc: sized("an arc of the radius %g is no line",
		"ein Bogen mit dem Halbmesser %g ist keine Linie"),
	linework.NoEllipse: ofDrawing("an ellipse without a width is no line",
		"eine Ellipse ohne Breite ist keine Linie"),
	linework.NoBlock: ofDrawing("a block is inserted with the scale 0, so there is nothing of it",
		"ein Block ist im Maßstab 0 eingefügt, also ist nichts davon da"),
	linework.BlockAmiss: ofDrawing("a block is inserted at a scale that leaves nothing of it, or far too large",
		"ein Block ist in einem Maßstab eingefügt, der nichts davon lässt, oder viel zu groß"),
	linework.SplineAmiss: ofDrawing("a spline whose control points and knots do not belong together; is the file "+
		"damaged?",
		"bei einer Kurve gehören Kontrollpunkte und Knoten nicht zusammen; ist die Datei "+
			"beschädigt?"),
	linework.NoWeight: sized("a spline with a weight of %g is no line",
		"eine Kurve mit dem Gewicht %g ist keine Linie"),
}

// sized is a sentence with the size that it speaks of.
func sized(english, german string) sentenceOfDrawing {
	return func(f *linework.Fault) language.Sentence { return language.Say(english, german, f.Size) }
}

// quoting is a sentence with the text that it speaks of.
func quoting(english, german string) sentenceOfDrawing {
	return func(f *linework.Fault) language.Sentence { return language.Say(english, german, f.Text) }
}

// ofDrawing is the same sentence of all drawings.
func ofDrawing(english, german string) sentenceOfDrawing {
	return func(*linework.Fault) language.Sentence { return language.Say(english, german) }
}

// layersOf a drawing by their names.
func layersOf(f *linework.Fault) language.Sentence {
	if len(f.Names) == 0 {
		return language.Say("none", "keine")
	}
	return language.Name(strings.Join(f.Names, ", "))
}
