"""A PDF of equally large pages, written page by page so that a thousand sheets need the memory of one."""
import zlib

PAGES_PER_NODE = 32


class PdfFile:
    """Object numbers are fixed beforehand: 1 catalog, 2 page tree, 3 font, then tree nodes, then two objects a page."""

    def __init__(self, out, page_count, width_pt, height_pt):
        self.out, self.page_count = out, page_count
        self.width_pt, self.height_pt = width_pt, height_pt
        self.node_count = -(-page_count // PAGES_PER_NODE)
        self.offsets = {}
        self.added = 0
        self.position = 0
        self._write(b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n")
        self._object(1, b"<< /Type /Catalog /Pages 2 0 R >>")
        nodes = " ".join(f"{4 + n} 0 R" for n in range(self.node_count))
        self._object(2, f"<< /Type /Pages /Count {page_count} /Kids [{nodes}] "
                        f"/MediaBox [0 0 {width_pt:.2f} {height_pt:.2f}] /Resources << /Font << /F1 3 0 R >> >> >>".encode())
        self._object(3, b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>")
        for node in range(self.node_count):
            pages = range(node * PAGES_PER_NODE, min(page_count, (node + 1) * PAGES_PER_NODE))
            kids = " ".join(f"{self._page_object(p)} 0 R" for p in pages)
            self._object(4 + node, f"<< /Type /Pages /Parent 2 0 R /Count {len(pages)} /Kids [{kids}] >>".encode())

    def add_page(self, content):
        """content: the page's operators as bytes."""
        number = self._page_object(self.added)
        node = 4 + self.added // PAGES_PER_NODE
        self._object(number, f"<< /Type /Page /Parent {node} 0 R /Contents {number + 1} 0 R >>".encode())
        packed = zlib.compress(content, 6)
        head = f"<< /Length {len(packed)} /Filter /FlateDecode >>\nstream\n".encode()
        self._object(number + 1, head + packed + b"\nendstream")
        self.added += 1

    def close(self):
        if self.added != self.page_count:
            raise ValueError(f"{self.page_count} pages announced, {self.added} added")
        size, start = max(self.offsets) + 1, self.position
        rows = [b"0000000000 65535 f \n"] + [b"%010d 00000 n \n" % self.offsets[n] for n in range(1, size)]
        self._write(f"xref\n0 {size}\n".encode() + b"".join(rows))
        self._write(f"trailer\n<< /Size {size} /Root 1 0 R >>\nstartxref\n{start}\n%%EOF\n".encode())

    def _page_object(self, page):
        return 4 + self.node_count + 2 * page

    def _object(self, number, body):
        self.offsets[number] = self.position
        self._write(b"%d 0 obj\n" % number + body + b"\nendobj\n")

    def _write(self, data):
        self.out.write(data)
        self.position += len(data)
