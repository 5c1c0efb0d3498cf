package job

import (
	"encoding/binary"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const boxJob = "job: Bøx\nunits: cm\ngarments: [{name: box, pieces: [{name: panel, width: 10, height: 97}]}]\n" +
	"cloths: [{name: shell, width: 100}]\n"

func inUTF16(order binary.AppendByteOrder, text string) []byte {
	var out []byte
	for _, unit := range utf16.Encode([]rune(text)) {
		out = order.AppendUint16(out, unit)
	}
	return out
}

func TestEncodings(t *testing.T) {
	for name, data := range map[string][]byte{
		"plain":                   []byte(boxJob),
		"byte-order mark":         []byte("\ufeff" + boxJob),
		"UTF-16":                  inUTF16(binary.LittleEndian, "\ufeff"+boxJob),
		"UTF-16, high byte first": inUTF16(binary.BigEndian, "\ufeff"+boxJob),
		"ends in dashes":          []byte(boxJob + "---"),
		"begins with dashes":      []byte("---\n" + boxJob + "---\n"),
	} {
		file, err := Parse("job.yaml", data)
		require.NoError(t, err, name)
		assert.Equal(t, Text("Bøx"), file.Job, name)
		_, err = file.Resolve()
		assert.NoError(t, err, name)
	}
}

func TestWhatIsNoTextIsRefusedWithItsPlace(t *testing.T) {
	for want, data := range map[string][]byte{
		"job.yaml:2: character 5 of the line is a NUL; write it anew, and save the " +
			"file as UTF-8": []byte("job: ø\nunit\x00s: cm\n"),
		"job.yaml:3: character 3 of the line is the byte FF, which " +
			"is not UTF-8": []byte("job: ø\n\n  \xffs: cm\n"),
		"job.yaml:1: the file is UTF-16 without a mark that says so; save " +
			"it as UTF-8": inUTF16(binary.LittleEndian, boxJob),
		"job.yaml:1: the file is marked as UTF-16, but ends within " +
			"a character": append(inUTF16(binary.BigEndian, "\ufeff"+boxJob), 'a'),
		"job.yaml:1: character 4 of the line is half of a character": {0xff, 0xfe, 'j', 0, 'o',
			0, 'b', 0, 0x00, 0xd8},
		"job.yaml:1: the file is empty": []byte("---\n---\n"),
		"a file holds one job":          []byte(boxJob + "---\njob: Two\n"),
	} {
		_, err := Parse("job.yaml", data)
		assert.ErrorContains(t, err, want)
	}
}

func TestDecimalCommaBetweenBraces(t *testing.T) {
	for want, piece := range map[string]string{
		"entry 1: between braces a comma parts two entries; write width: 10.5":    "{name: panel, width: 10,5, height: 97}",
		"entry 1: between braces a comma parts two entries; write height: 9.5 cm": "{name: panel, width: 10, height: 9,5 cm}",
	} {
		_, err := Parse("job.yaml", []byte("job: Box\nunits: cm\ngarments:\n  - name: box\n    pieces:\n      - "+
			piece+"\ncloths: [{name: shell, width: 100}]\n"))
		assert.ErrorContains(t, err, want)
		assert.ErrorContains(t, err, "job.yaml:6: ")
	}
}
