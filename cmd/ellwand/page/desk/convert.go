package desk

import (
	"ellwand/cmd/ellwand/job"
	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
)

// InUnits writes a job in other units: every length in it is converted, and rounded for
// people. The error is that of a job that cannot be read.
func InUnits(text, units string) (string, error) {
	to, err := measure.ParseUnit(units)
	if err != nil || to != measure.Centimetre && to != measure.Millimetre && to != measure.Inch {
		return "", language.Refuse("a job is in cm, mm or in", "ein Auftrag ist in cm, mm oder in")
	}
	file, err := job.Parse("the job", []byte(text))
	if err != nil {
		return "", language.Refuse("the job has faults; put them right before its units are changed",
			"der Auftrag hat Fehler; berichtigen Sie sie, bevor Sie die Einheit ändern")
	}
	was := text
	all, err := file.InUnits(to, func(path job.Path) (string, bool) { return edit.Get(was, path) })
	if err != nil {
		return "", err
	}
	edits := make([]edit.Edit, 0, len(all)+1)
	for _, one := range all {
		edits = append(edits, edit.Edit{Path: one.Path, Value: edit.Text(one.Text)})
	}
	return edit.SetAll(text, append(edits, edit.Edit{Path: strict.Top("units"), Value: edit.Text(to.String())}))
}
