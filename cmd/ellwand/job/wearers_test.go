package job

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/pieces/safety"
)

// What is cut is cautioned of for the youngest who may wear it, however she was
// sized.
func TestYoungestWearer(t *testing.T) {
	const small = "bust girth: 66, waist girth: 60, hip girth: 71"
	for _, c := range []struct {
		name, wearers string
		want          safety.Wearer
	}{
		{"a child's size", "size: 116\ntable: children", safety.Child},
		{"a woman's size", "size: 12\ntable: women", safety.Adult},
		{"measured, with a height", "body: {height: 128, " + small + "}", safety.PerhapsChild},
		{"measured, without", "body: {" + small + "}", safety.PerhapsChild},
		{"a short woman", "size: 12\ntable: women\nbody: {height: 148}", safety.PerhapsChild},
		{"a tall one", "size: 12\ntable: women\nbody: {height: 178}", safety.Adult},
		{"in inches", `body: {height: 58 in, bust girth: 36 in, waist girth: 29 in, hip girth: 38 in}`, safety.PerhapsChild},
		{"mother and child", "wearers: [{name: Imke, size: 12, table: women}, {name: Tomasz, body: {" + small + "}}]",
			safety.PerhapsChild},
		{"two children", "wearers: [{name: Imke, size: 116, table: children}, {name: Tomasz, body: {" + small + "}}]",
			safety.Child},
	} {
		work, err := resolve(t, "job: Skirts\nunits: cm\n"+c.wearers+
			"\ngarments: [{name: skirt, skirt: {shape: tiered, length: 40}}]\ncloths: [{name: shell, width: 140}]\n")
		require.NoError(t, err, c.name)
		assert.Equal(t, c.want, work.Youngest, c.name)
	}
}
